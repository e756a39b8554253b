/**
 * The language a build speaks: English, or what SITE_LANGUAGE names. Its words lie in a folder of
 * `src/lib/words`, its content in a folder of `content`; SITE_TEXTS names another place for both.
 */
export const language = process.env.SITE_LANGUAGE ?? 'en';
const elsewhere = process.env.SITE_TEXTS;

export const wordsFolder = elsewhere ? `${elsewhere}/words` : `src/lib/words/${language}`;
export const contentFolder = elsewhere
  ? `${elsewhere}/content`
  : language === 'en'
    ? 'content'
    : `content/${language}`;
