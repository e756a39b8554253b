/** Bounds of the file format. Not figures of the trade: they keep reading quick and names readable. */
export const bounds = {
  /** Characters of a job file. A thousand zones with long names take about a quarter of this. */
  fileLength: 4_000_000,
  /** Characters of a text up to which the place of a slip in its JSON is looked for. */
  placedLength: 500_000,
  /** Levels of nesting. The format needs six. */
  nesting: 32,
  /** Characters (code points) of a site's or a zone's name. */
  nameLength: 120,
  /** Single days off in a job. */
  daysOff: 60,
  /** Characters of a zone's id. */
  idLength: 40,
  /** Characters of the fragment of a share link that is read. */
  linkLength: 100_000,
  /** Bytes a link may unfold to. The longest link offered unfolds to about a hundredth. */
  linkContent: 1_000_000,
  /** Characters above which a link is not offered: some programs cut longer ones. */
  linkOffered: 2_000,
  /** Largest size of a reader's own value of a figure. */
  ownFigure: 1e9,
  /** Photos of one zone. */
  photosInZone: 6,
  /** Pixels of the longer side of a photo as it is kept. */
  photoSide: 1_600,
  /** Bytes of a photo as it is kept. */
  photoBytes: 1_000_000,
  /** Bytes of all photos in one job file: what a phone still reads in one piece. */
  photosInFile: 24_000_000,
  /** Bytes, and pixels, of a picture that is taken in. A camera of 108 megapixels stays below. */
  pictureBytes: 80_000_000,
  picturePixels: 120_000_000,
  /** Marks on one photo, and characters of a label on it and of its caption. */
  photoMarks: 20,
  photoLabel: 20,
  /** Largest size of a number typed as a result; what is larger is kept as text. */
  entry: 1e9,
} as const;
