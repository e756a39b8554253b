/**
 * Copies a text; where the browser does not let the page, the field it stands in is selected, to be
 * copied by hand.
 * @returns whether it was copied
 */
export async function copyOrSelect(
  text: string,
  field: HTMLInputElement | HTMLTextAreaElement | undefined,
): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    field?.focus();
    field?.select();
    return false;
  }
}
