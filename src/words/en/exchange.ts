/** Handing work on: what can go wrong, and what a seal shows and does not show. */
export const EXCHANGE = {
  'exchange.empty': 'There is nothing in it. Choose another file, or paste the whole link.',
  'exchange.not-ours': 'This is no file, link or code of Detent. Nothing was taken in.',
  'exchange.damaged': 'It did not arrive whole, so nothing was taken in. Ask for it again, best as a file.',
  'exchange.too-large': 'This is too large to be taken this way. Hand it over as a file.',
  'exchange.newer':
    'It was made by a newer Detent. Reload this page to get the newer one; what you have is untouched.',
  'exchange.wrong-shape': 'It is not what it says it is, so nothing was taken in. Ask for it again.',
  'exchange.wrong-shape.at':
    'It is not what it says it is, at {detail}, so nothing was taken in. Ask for it again.',
  'exchange.part-of-another': 'This code belongs to another set. The codes you have read so far are kept.',
  'exchange.parts-missing': 'Still to be read: code {detail}.',
  'exchange.no-code-seen':
    'No code was found in the picture. Hold still, fill the frame with one code, avoid glare.',
  'proof.sound': 'The seal is whole: this is just as the device made it, and nobody changed it on the way.',
  'proof.broken': 'The seal does not fit: the report was changed after it was made. Ask for it again.',
  'proof.none': 'The report has no seal, so it cannot be told whether it was changed on the way.',
  'proof.not-checked': 'The seal cannot be checked on this page. Open Detent over https.',
  'proof.limits':
    'A seal shows that a report is as one device made it, and whether two reports come from the same device. It does not show who held the device, nor that nobody helped.',
  'proof.other-device':
    'This report comes from another device than the one before. Ask whether there is a new phone.',
  'qti.caution': 'Caution: {text}',
  'qti.place': '{number}: {label}',
  'qti.order': 'Put them in order. First: {first}. Last: {last}.',
  'qti.number':
    '{decimals, plural, =0 {Answer in whole numbers.} one {Answer with one decimal.} other {Answer with # decimals.}} Within {tolerance} counts as right.',
  'qti.chart.range': 'Range',
  'qti.chart.ratio': 'Ratio',
} as const;
