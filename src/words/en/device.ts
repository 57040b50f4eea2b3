/** This device: how safe what is stored is, a backup, a new phone. */
export const DEVICE = {
  'device.title': 'This device',
  'device.language': 'Language',
  'device.link': 'This device: language, backup, new phone',
  'device.reading': 'Reading…',
  'device.keeping': 'Is it safe here?',
  'device.keeping.promised':
    'The browser has promised to keep your answers. Only you can remove them, by clearing this site’s data.',
  'device.keeping.not-promised':
    'The browser was asked and has not promised to keep your answers: when this device runs short of room it may drop them. Save a backup now and then.',
  'device.keeping.not-asked':
    'The browser has not been asked yet to keep your answers. It is asked after the first drill.',
  'device.keeping.unknown':
    'This browser does not say whether it keeps your answers. Save a backup now and then.',
  'device.ask': 'Ask the browser to keep them',
  'device.room': 'About {used, number} MB used here, of {room, number} GB there are.',
  'device.where': 'In a private window everything is gone once the window is closed.',
  'device.backup': 'Backup',
  'device.backup-how':
    'One file with everything of yours on this device: answers, decks, settings, the drill under way, self-checks, and what you assigned or collected.',
  'device.backup-save': 'Save a backup file',
  'device.backup-saved': '{file} is ready. Keep it where you will find it when this device is lost.',
  'device.backup-without':
    'The file is not encrypted: whoever has it can read it. Not in it is the key that seals reports, which cannot leave this device: a new phone gets its own.',
  'device.new-phone': 'New phone',
  'device.new-phone-how':
    'Best take the backup file over and put it in there. Without a cable or an account, codes do as well, as long as there are not too many answers: show them here, read them there.',
  'device.codes-decks': 'Decks too (more codes; not needed for those that come with Detent)',
  'device.codes': 'Show the codes',
  'device.codes-title': 'Your backup as codes',
  'device.restore': 'Put a backup in',
  'device.restore-how': 'Choose the file of a backup, or read the codes that your other device shows.',
  'device.no-backup': 'That can be read, but it is no backup.',
  'device.offer-title': 'A backup',
  'device.offer':
    'Made {made}{named, select, yes { by {name}} other {}}, with {answers, plural, =0 {no answers} one {one answer} other {# answers}} and {decks, plural, =0 {no deck} one {one deck} other {# decks}}.',
  'device.left-out':
    'These decks in it do not pass the checks and stay out: {decks}. Answers about them are put in, and count once the deck is there.',
  'device.another-person':
    'This backup is from {theirs}, and this device is practised on by {own}. Put in, these answers count as those of {own}.',
  'device.offer-joins':
    'Nothing on this device is overwritten: answers that are here already stay as they are, those that are missing are added.',
  'device.put-in': 'Put it in',
  'device.restored':
    '{answers, plural, =0 {No answer was missing} one {One answer was added} other {# answers were added}}, {known, plural, =0 {none was} one {one was} other {# were}} here already; {decks, plural, =0 {no deck was added} one {one deck was added} other {# decks were added}}.',
  'clock.behind':
    'The clock of this device is behind your last answer. Your answers are safe and keep their order, but days are counted by this clock: set it right.',
  'clock.moved':
    'You last practised by the clock of {before}; now it is that of {now}. Days already counted stay as they are.',
} as const;
