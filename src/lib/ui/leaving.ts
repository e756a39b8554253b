let agreed = false;

/** Whether the reader has agreed to leave, or nothing is lost by it. */
export const hasAgreed = (): boolean => agreed;

/** Leaves for an address without asking again. */
export function agree(to: string): void {
  agreed = true;
  location.assign(to);
}
