/** What went wrong with storage: what is safe first, then what to do. */
export const STORAGE = {
  'storage.full':
    'Everything stored so far is safe, but this device has no room for more. Free some space, then press Check again.',
  'storage.blocked':
    'Your answers are safe. Detent is still open in another tab, which holds them: close that tab, then try again.',
  'storage.newer':
    'Your answers are safe and untouched. A newer Detent has taken them over, perhaps in another tab: reload this page.',
  'storage.deleted':
    'What was kept here was taken off this device from another tab, so nothing more can be stored under this name. Reload this page.',
  'storage.elsewhere':
    'Your answers are safe. This drill went on in another tab, so this one was not stored: go on there, or press Go on here.',
  'storage.unavailable':
    'This browser gives Detent no place to store answers now. A private window can cause that: open Detent in an ordinary window, or reload.',
  'storage.unwritten':
    'This could not be stored just now; the device may have no room left. What was stored before is safe. Free some space, then press once more.',
  'storage.unreadable':
    '{count, plural, one {One stored answer} other {# stored answers}} cannot be read by this version and {count, plural, one {is} other {are}} left out. Nothing was deleted.',
} as const;
