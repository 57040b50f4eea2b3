/**
 * Figures, dates and units as a language writes them. Core and decks hand figures over as text with a point
 * ("3.480", "1.60 mm", "1.78 − 0.25"), days as "2026-11-25"; only text that is nothing but such is written anew,
 * so that a name or a sentence of the deck stays as it is. English keeps the ISO day: its readers differ in the
 * order of day and month.
 */
export const LANGUAGES = ['en', 'de', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The locale whose marks a language is written with: the Spanish here is North American, with a decimal point. */
export const LOCALES: Readonly<Record<Language, string>> = { en: 'en', de: 'de', es: 'es-MX' };

/** Units that are a word of the language; all others are signs. */
const UNIT_WORDS: Readonly<Partial<Record<Language, Readonly<Record<string, string>>>>> = {
  de: { rpm: 'U/min' },
};

const FIGURES =
  /^(?:[\d\s.,;:+\u2212\u2013×÷=±()²%°-]|mm|in|N·m|lbf·ft|lbf·in|lbf|kN|N|kPa|bar|psi|Ω|kΩ|V|A|Hz|kg|lb|US qt|L|km\/h|mph|°C|°F|rpm)+$/;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** How a language writes a text that core or a deck hands over. */
export function writerOf(language: Language): (text: string) => string {
  // English is how they are handed over; a formatter takes its time to make, so none is made before it is needed.
  if (language === 'en') return (text) => text;
  const locale = LOCALES[language];
  let mark: string | undefined;
  const decimalMark = () => {
    mark ??=
      new Intl.NumberFormat(locale).formatToParts(1.5).find(({ type }) => type === 'decimal')?.value ?? '.';
    return mark;
  };
  const units = Object.entries(UNIT_WORDS[language] ?? {});
  let days: Intl.DateTimeFormat | undefined;
  return (text) => {
    if (DAY.test(text)) {
      days ??= new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
      const day = new Date(`${text}T00:00Z`);
      return Number.isNaN(day.getTime()) ? text : days.format(day);
    }
    if (!FIGURES.test(text)) return text;
    const marked = text.replaceAll(/(?<=\d)\.(?=\d)/g, decimalMark);
    return units.reduce((said, [unit, word]) => said.replaceAll(unit, word), marked);
  };
}
