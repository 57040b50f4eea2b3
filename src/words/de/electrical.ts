/** Questions on windings, sensors and wires, in German. */
export const ELECTRICAL = {
  'electrical.ohms': '{ohms} Ω',
  'electrical.open': 'unterbrochen',
  'electrical.degrees': '{celsius} °C',
  'electrical.band': '{low} bis {high} Ω',
  'electrical.reading-at': '{ohms} Ω bei {celsius} °C',
  'electrical.place-low': 'unter dem Bereich',
  'electrical.place-in': 'im Bereich',
  'electrical.place-high': 'über dem Bereich',
  'electrical.solenoid-pin': '{solenoid} (Pin {pin})',

  'family.heat-pairs': 'Widerstand und Wärme',
  'heat-pairs.prompt':
    '{part}: der Widerstand wurde bei mehreren Temperaturen gemessen und ist durcheinandergeraten. Was gehört zusammen?',
  'heat-pairs.winding': 'Kupferwicklung von {solenoid}',
  'heat-pairs.row-falls': 'Je wärmer, desto weniger Widerstand.',
  'heat-pairs.row-rises': 'Je wärmer, desto mehr Widerstand.',
  'heat-pairs.reason-sensor':
    'Temperatursensoren gibt es in beiden Arten; der Datensatz sagt, welche dieser ist.',
  'heat-pairs.reason-copper': 'Kupfer hat warm immer mehr Widerstand.',

  'family.winding-at-heat': 'Eine Wicklung warm und kalt',
  'winding-at-heat.prompt-warm':
    'Die Kupferwicklung von {solenoid} hat bei 20 °C {ohms} Ω. Kupfer ändert sich davon um 0,393 % je °C. Wie viel hat sie bei {celsius} °C, in Ohm? Zwei Nachkommastellen; bis {tolerance} Abweichung gilt als richtig.',
  'winding-at-heat.prompt-back':
    'Die Kupferwicklung von {solenoid} hat bei {celsius} °C {ohms} Ω. Kupfer ändert sich um 0,393 % seines Werts bei 20 °C je °C. Wie viel hätte sie bei 20 °C, in Ohm? Zwei Nachkommastellen; bis {tolerance} Abweichung gilt als richtig.',
  'winding-at-heat.factor': 'Bei {celsius} °C, {over} von 20 entfernt: 1 + 0,00393 × {over} = {factor}.',
  'winding-at-heat.reason-warm': '{ohms} × {factor} = {value} Ω.',
  'winding-at-heat.reason-back': '{ohms} ÷ {factor} = {value} Ω.',
  'winding-at-heat.percent': 'Bei {celsius} °C weicht sie um {percent} % vom Wert bei 20 °C ab.',
  'winding-at-heat.copper': 'Das gilt nur für die Wicklung: Leitungen und Stecker ändern sich kaum.',

  'family.winding-verdict': 'Eine Wicklung nach ihrem Bereich beurteilt',
  'winding-verdict.prompt':
    'Der Bereich von {solenoid} ist {low} bis {high} Ω bei 20 °C. Seine Kupferwicklung wurde bei anderen Temperaturen gemessen (0,393 % des Werts bei 20 °C je °C). Wo liegt jede Messung, auf 20 °C zurückgerechnet?',
  'winding-verdict.row':
    'Teile jede Messung durch 1 + 0,00393 × (Temperatur − 20), dann sieh auf den Bereich.',
  'winding-verdict.reason': 'Der Bereich, {low} bis {high} Ω, gilt für 20 °C und für nichts anderes.',
  'winding-verdict.line': '{ohms} Ω bei {celsius} °C: {ohms} ÷ {factor} = {at20} Ω bei 20 °C, {place}.',

  'family.pin-pairs': 'Ohm zwischen zwei Pins',
  'pin-pairs.prompt':
    'Gemessen zum gemeinsamen Pin {common}: {one} {first} Ω, {other} {second} Ω. Was zeigt das Messgerät zwischen den Pins der zwei Magnetventile, in Ohm? Bis {tolerance} Abweichung gilt als richtig.',
  'pin-pairs.row': '{first} + {second} = {sum} Ω.',
  'pin-pairs.reason':
    'Vom einen Pin durch seine Wicklung bis dorthin, wo Pin {common} ankommt, und von da durch die andere Wicklung: eine nach der anderen.',
  'pin-pairs.parallel': 'Nebeneinander wären es {parallel} Ω, weniger als jede: das ist hier nicht der Weg.',

  'family.winding-fault': 'Welchen Fehler die Messungen zeigen',
  'winding-fault.prompt':
    'Wicklungen, die sich Pin {common} teilen, bei 20 °C gemessen, Widerstand der Messleitungen abgezogen{case, select, unread {; zum Gehäuse wurde nicht gemessen} other {}}. Welche davon passen zu allen Messungen?',
  'winding-fault.band': 'Bereich',
  'winding-fault.to-common': 'Zu Pin {common}',
  'winding-fault.to-case': 'Zum Gehäuse',
  'winding-fault.sound': 'kein Fehler',
  'winding-fault.open': '{one}: Wicklung oder Leitung gebrochen',
  'winding-fault.turns-shorted': '{one}: einige Windungen überbrückt',
  'winding-fault.shorted': '{one}: von Ende zu Ende überbrückt',
  'winding-fault.high-resistance': '{one}: schlechte Verbindung in der Leitung',
  'winding-fault.to-ground': '{one}: der Pin berührt das Gehäuse',
  'winding-fault.pins-joined': '{one} und {other}: Pins verbunden',
  'winding-fault.common-open': 'Pin {common}: Leitung gebrochen',
  'winding-fault.common-to-ground': 'Pin {common} berührt das Gehäuse',
  'winding-fault.row':
    'Ein Fehler passt, wenn jede Messung so ist, wie er sie gäbe, und keine dagegen spricht.',
  'winding-fault.reason-case':
    'Zum gemeinsamen Pin zeigt sich jede Wicklung; zum Gehäuse ist alles unterbrochen, bis etwas es berührt.',
  'winding-fault.reason-no-case':
    'Zum gemeinsamen Pin zeigt sich jede Wicklung. Was das Gehäuse berührt, zeigt sich dort gar nicht.',
  'winding-fault.reason-ground': 'Zum gemeinsamen Pin zeigt sich jede Wicklung.',
  'winding-fault.fits': 'Passt: {fault}. {would}',
  'winding-fault.does-not-fit': 'Passt nicht: {fault}. {would}',
  'winding-fault.would-sound': 'Jede Wicklung in ihrem Bereich, zum gemeinsamen Pin und sonst nirgendwohin.',
  'winding-fault.would-open': 'Diese Wicklung unterbrochen, die anderen in ihren Bereichen.',
  'winding-fault.would-turns-shorted': 'Diese Wicklung unter ihrem Bereich, die anderen darin.',
  'winding-fault.would-shorted': 'Diese Wicklung bei null, die anderen in ihren Bereichen.',
  'winding-fault.would-high-resistance': 'Diese Wicklung über ihrem Bereich, die anderen darin.',
  'winding-fault.would-to-ground':
    'Jede Wicklung in ihrem Bereich; dieser Pin zum Gehäuse bei null, die anderen dorthin durch zwei Wicklungen.',
  'winding-fault.would-pins-joined':
    'Beide mit demselben Wert, weniger als jede allein: sie liegen nebeneinander.',
  'winding-fault.would-common-open': 'Jede Wicklung zu Pin {common} unterbrochen.',
  'winding-fault.would-common-to-ground':
    'Jede Wicklung in ihrem Bereich, zu Pin {common} und zum Gehäuse gleich.',

  'family.solenoid-current': 'Strom eines Magnetventils',
  'solenoid-current.prompt-full':
    '{solenoid} hat {ohms} Ω und bekommt {volts} V, der Spannungsabfall der Endstufe bleibt außer Betracht. Welcher Strom fließt, wenn es dauernd an ist, in Ampere? Zwei Nachkommastellen; bis {tolerance} Abweichung gilt als richtig.',
  'solenoid-current.prompt-mean':
    '{solenoid} hat {ohms} Ω und wird schnell geschaltet, an während {percent} % der Zeit, bei {volts} V. Ein Freilaufzweig lässt den Strom weiterfließen; Spannungsabfall und Welligkeit bleiben außer Betracht. Wie groß ist der mittlere Strom, in Ampere? Zwei Nachkommastellen; bis {tolerance} Abweichung gilt als richtig.',
  'solenoid-current.row': '{volts} V ÷ {ohms} Ω = {amperes} A, wenn es an ist.',
  'solenoid-current.reason-full': 'Volt durch Ohm sind Ampere.',
  'solenoid-current.reason-mean': '{percent} % von {full} A = {amperes} A.',
  'solenoid-current.holds':
    'Es ist der Mittelwert, weil der Freilaufzweig den Strom weiterlaufen lässt, während die Endstufe aus ist.',

  'family.driver-pin': 'Spannung am Pin einer Endstufe',
  'driver-pin.prompt-low':
    '{solenoid} liegt an Batteriespannung; das Steuergerät schaltet die Masseseite. Was liegt am Pin des Steuergeräts, gegen Masse gemessen?',
  'driver-pin.prompt-high':
    '{solenoid} liegt am anderen Ende an Masse; das Steuergerät schaltet die Plusseite. Was liegt am Pin des Steuergeräts, gegen Masse gemessen?',
  'driver-pin.pin': 'Am Pin',
  'driver-pin.case-sound': 'Endstufe {driver}, Leitung in Ordnung',
  'driver-pin.case-open': 'Endstufe {driver}, Leitung gebrochen',
  'driver-pin.case-short-to-ground': 'Endstufe {driver}, Leitung berührt Masse',
  'driver-pin.case-short-to-supply': 'Endstufe {driver}, Leitung berührt Batteriespannung',
  'driver-pin.driver-off': 'aus',
  'driver-pin.driver-on': 'an',
  'driver-pin.level-supply': 'Batteriespannung',
  'driver-pin.level-ground': '0 V',
  'driver-pin.level-floating': 'nichts hält ihn',
  'driver-pin.row-low':
    'Aus: die Wicklung bringt Batteriespannung an den Pin. An: die Endstufe zieht den Pin auf Masse.',
  'driver-pin.row-high':
    'Aus: die Wicklung hält den Pin auf Masse. An: die Endstufe legt Batteriespannung darauf.',
  'driver-pin.reason':
    'Ist die Leitung gebrochen, kann nur noch die Endstufe den Pin halten; eine Leitung, die etwas berührt, wird davon gehalten.',
  'driver-pin.line':
    '{case}: {level}{powered, select, yes {, in der Wicklung fließt Strom} other {}}{overloaded, select, yes {, und die Endstufe arbeitet gegen den Kurzschluss} other {}}.',

  'family.sensor-frequency': 'Drehzahl und Frequenz',
  'sensor-frequency.prompt-hertz':
    '{sensor} sitzt über einem Geberrad mit {teeth} Zähnen auf {shaft} und gibt einen Impuls je Zahn. Die Welle dreht mit {given} U/min. Wie viele Impulse je Sekunde sind das, in Hz? Bis {tolerance} Abweichung gilt als richtig.',
  'sensor-frequency.prompt-rpm':
    '{sensor} sitzt über einem Geberrad mit {teeth} Zähnen auf {shaft} und gibt einen Impuls je Zahn. Er gibt {given} Hz. Wie schnell dreht die Welle, in U/min? Bis {tolerance} Abweichung gilt als richtig.',
  'sensor-frequency.row-hertz': '{teeth} × {given} ÷ 60 = {value} Hz.',
  'sensor-frequency.row-rpm': '{given} × 60 ÷ {teeth} = {value} U/min.',
  'sensor-frequency.reason':
    '{teeth} Impulse je Umdrehung; die 60 ist da, weil Drehzahl je Minute geht und Frequenz je Sekunde.',
} as const;
