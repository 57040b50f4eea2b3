/** What is said when the words themselves did not come. */
import type { Language } from './figures.ts';

export const UNLOADED: Readonly<Record<Language, { readonly note: string; readonly again: string }>> = {
  en: {
    note: 'Detent could not load all its files. What you answered is kept on this device. Open the page again once there is a network.',
    again: 'Reload',
  },
  de: {
    note: 'Detent konnte nicht alle seine Dateien laden. Was du geantwortet hast, bleibt auf diesem Gerät. Öffne die Seite noch einmal, sobald es Netz gibt.',
    again: 'Neu laden',
  },
  es: {
    note: 'Detent no pudo cargar todos sus archivos. Lo que contestaste queda en este dispositivo. Abre la página otra vez cuando haya red.',
    again: 'Recargar',
  },
};
