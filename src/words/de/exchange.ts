/** Handing work on, in German: what can go wrong, and what a seal shows and does not show. */
export const EXCHANGE = {
  'exchange.empty': 'Da ist nichts drin. Wähle eine andere Datei oder füge den ganzen Link ein.',
  'exchange.not-ours': 'Das ist keine Datei, kein Link und kein Code von Detent. Es wurde nichts übernommen.',
  'exchange.damaged':
    'Es ist nicht ganz angekommen, darum wurde nichts übernommen. Bitte noch einmal darum, am besten als Datei.',
  'exchange.too-large': 'Auf diesem Weg ist das zu groß. Gib es als Datei weiter.',
  'exchange.newer':
    'Das hat ein neueres Detent gemacht. Lade diese Seite neu, dann hast du das neuere; was du hast, bleibt unverändert.',
  'exchange.wrong-shape':
    'Es ist nicht, was es zu sein angibt, darum wurde nichts übernommen. Bitte noch einmal darum.',
  'exchange.wrong-shape.at':
    'Es ist nicht, was es zu sein angibt (bei {detail}), darum wurde nichts übernommen. Bitte noch einmal darum.',
  'exchange.part-of-another':
    'Dieser Code gehört zu einem anderen Satz. Die bisher gelesenen Codes bleiben erhalten.',
  'exchange.parts-missing': 'Noch zu lesen: Code {detail}.',
  'exchange.no-code-seen':
    'Im Bild ist kein Code zu erkennen. Halte still, fülle das Bild mit einem Code, meide Spiegelungen.',
  'proof.sound': 'Das Siegel ist heil: so hat es das Gerät gemacht, und unterwegs hat es niemand verändert.',
  'proof.broken':
    'Das Siegel passt nicht: der Bericht wurde nachträglich verändert. Bitte noch einmal darum.',
  'proof.none': 'Der Bericht hat kein Siegel; ob er unterwegs verändert wurde, lässt sich nicht sagen.',
  'proof.not-checked': 'Auf dieser Seite lässt sich das Siegel nicht prüfen. Öffne Detent über https.',
  'proof.limits':
    'Ein Siegel zeigt, dass ein Bericht so ist, wie ein Gerät ihn gemacht hat, und ob zwei Berichte vom selben Gerät kommen. Es zeigt nicht, wer das Gerät in der Hand hatte, und nicht, dass niemand geholfen hat.',
  'proof.other-device':
    'Dieser Bericht kommt von einem anderen Gerät als der vorige. Frage, ob es ein neues Handy gibt.',
  'qti.caution': 'Warnhinweis: {text}',
  'qti.place': '{number}: {label}',
  'qti.order': 'Bringe sie in Reihenfolge. Zuerst: {first}. Zuletzt: {last}.',
  'qti.number':
    '{decimals, plural, =0 {Antworte in ganzen Zahlen.} one {Antworte mit einer Nachkommastelle.} other {Antworte mit # Nachkommastellen.}} Bis {tolerance} Abweichung gilt als richtig.',
  'qti.chart.range': 'Gang',
  'qti.chart.ratio': 'Übersetzung',
} as const;
