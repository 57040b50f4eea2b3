/** Questions on measuring, in German: reading instruments, plays and gaps, choosing the part, checking figures. */
export const MEASURING = {
  'measuring.part': '{part} ({thickness} {unit})',
  'measuring.place-low': 'zu wenig',
  'measuring.place-in': 'in den Grenzen',
  'measuring.place-high': 'zu viel',
  'measuring.read-bare': '{play} {unit}, ohne Auswahlteil',
  'measuring.read-part': '{play} {unit}, mit {part}',
  'measuring.read-depths':
    'Sitz {seat} {unit}{seatBar, select, yes { über die Messbrücke} other {}}, Überstand {standOff} {unit}{standOffBar, select, yes { über die Messbrücke} other {}}',
  'measuring.bare-read': 'Ohne Auswahlteil ist das Spiel {bare} {unit}, wie gemessen.',
  'measuring.bare-closes': 'Spiel ohne Auswahlteil: {play} + {part} = {bare} {unit}.',
  'measuring.bare-opens': 'Spiel ohne Auswahlteil: {play} − {part} = {bare} {unit}.',
  'measuring.bare-depths': 'Spiel ohne Auswahlteil: {seat} − {standOff}{gasket} = {bare} {unit}.',

  'family.dial-reading': 'Eine Messuhr ablesen',
  'dial-reading.prompt-zeroed':
    '{fit}: die Messuhr stand an einem Ende des Wegs auf null und zeigt am anderen das hier. Ein Teilstrich ist {division} {unit}. Wie groß ist der Weg, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'dial-reading.prompt-moved':
    '{fit}: die Messuhr stand nicht auf null. An einem Ende des Wegs zeigte sie das erste Bild, am anderen das zweite. Ein Teilstrich ist {division} {unit}. Wie groß ist der Weg, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'dial-reading.face': '{steps} × {turn} + {divisions} × {division} = {shown} {unit} auf der Messuhr.',
  'dial-reading.reason-zeroed': 'Sie begann bei null, der Weg ist also {travel} {unit}.',
  'dial-reading.reason-moved': '{to} − {from} = {travel} {unit}.',
  'dial-reading.small-hand':
    'Der kleine Zeiger ist an so vielen Ziffern vorbei, wie der große ganze Umdrehungen gemacht hat, je {turn} {unit}.',

  'family.micrometer-reading': 'Eine Bügelmessschraube ablesen',
  'micrometer-reading.prompt':
    '{fit}: ein Teil aus dem Kasten wird gemessen. Ein Teilstrich der Messtrommel ist {division} {unit}. Wie groß ist das Maß, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'micrometer-reading.sleeve':
    'Skalenhülse: {steps} {steps, plural, one {Strich} other {Striche}} × {line} = {sleeve} {unit}.',
  'micrometer-reading.sum':
    'Messtrommel: {divisions} × {division} = {fine} {unit}. {sleeve} + {fine} = {value} {unit}.',
  'micrometer-reading.lines-mm':
    'Die Striche auf der anderen Seite der Bezugslinie sind die halben Millimeter: zwei Striche der Skalenhülse je Millimeter.',
  'micrometer-reading.lines-in': 'Vier Striche der Skalenhülse, je 0,025 in, bis zur nächsten Ziffer.',

  'family.depth-gauge-reading': 'Einen Tiefenmessschieber ablesen',
  'depth-gauge-reading.prompt':
    '{fit}: gemessen wird die Tiefe des Sitzes unter der Fläche{bar, select, none {} other {; der Messschieber steht auf einer Messbrücke von {bar} {unit}, die über der Fläche liegt}}. Ein Noniusstrich ist {division} {unit}. Wie tief liegt der Sitz unter der Fläche, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'depth-gauge-reading.scales':
    'Hauptskala {main}, Nonius {divisions} × {division} = {fine}: zusammen {shown} {unit}.',
  'depth-gauge-reading.bar': 'Weniger die Messbrücke: {shown} − {bar} = {depth} {unit}.',
  'depth-gauge-reading.no-bar':
    'Der Messschieber steht auf der Fläche selbst, das ist also die Tiefe: {depth} {unit}.',
  'depth-gauge-reading.vernier':
    'Die Null des Nonius sagt den Strich der Hauptskala; der Noniusstrich, der auf irgendeinen Strich der Hauptskala trifft, sagt den Rest, je {division} {unit}.',

  'family.depth-gap': 'Spiel aus zwei Tiefen',
  'depth-gap.prompt':
    '{fit}: von der Fläche hinab zum Sitz liest der Messschieber {seat} {unit}{seatBar, select, yes { über die Messbrücke} other {}}. Das Teil darüber steht über seine eigene Fläche vor, abgelesen {standOff} {unit}{standOffBar, select, yes { über die Messbrücke} other {}}.{bar, select, none {} other { Die Messbrücke hat {bar} {unit}.}}{gasket, select, none {} other { Die Dichtung zwischen den Flächen hat zusammengedrückt {gasket} {unit}.}} Wie groß ist das Spiel ohne Auswahlteil, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'depth-gap.reason':
    'Wie tief der Sitz liegt, weniger wie weit das Teil zu ihm hinabreicht, lässt die Lücke.',
  'depth-gap.bar': 'In einer Messung über die Messbrücke steckt die Messbrücke: {bar} {unit} gehen ab.',
  'depth-gap.gasket': 'Die Dichtung hält die Flächen {gasket} {unit} auseinander, vergrößert also die Lücke.',

  'family.select-part': 'Das Auswahlteil bestimmen',
  'select-part.prompt':
    '{fit}: Grenzen {low} bis {high} {unit}, Zielwert {aim}{aimed, select, middle {, die Mitte} other {}}. Ein dickeres Teil {effect, select, closes {nimmt Spiel weg} other {gibt Spiel dazu}}, eins zu eins. Zwei Getriebe wurden gemessen.{bar, select, none {} other { Die Messbrücke hat {bar} {unit}.}}{gasket, select, none {} other { Die Dichtung gibt {gasket} {unit} dazu.}} Gib jedem das Teil der Liste, das dem Zielwert am nächsten kommt und in den Grenzen liegt.',
  'select-part.row': 'Erstes Getriebe: {first}. Zweites Getriebe: {second}.',
  'select-part.reason-closes':
    'Das Spiel ohne Auswahlteil, weniger das Spiel, das bleiben soll, ist die nötige Dicke des Teils.',
  'select-part.reason-opens':
    'Das Spiel, das bleiben soll, weniger das Spiel ohne Auswahlteil, ist die nötige Dicke des Teils.',
  'select-part.first': 'Erstes Getriebe.',
  'select-part.second': 'Zweites Getriebe.',
  'select-part.aim-closes': 'Damit {aim} bleiben: {bare} − {aim} = {thickness} {unit}.',
  'select-part.aim-opens': 'Für {aim}: {aim} − {bare} = {thickness} {unit}.',
  'select-part.leaves':
    'Am nächsten in der Liste: {part}. Damit bleiben {play} {unit}, in den Grenzen {low} bis {high}.',

  'family.play-after': 'Spiel mit einem anderen Teil',
  'play-after.prompt':
    '{fit}: Grenzen {low} bis {high} {unit}. Gemessen: {reading}. Wie groß wäre das Spiel stattdessen mit jedem von diesen?',
  'play-after.reason-closes':
    'Hier liegt das Teil in dem Raum, um den es beim Spiel geht: ein dickeres nimmt Spiel weg.',
  'play-after.reason-opens': 'Hier hält das Teil das Spiel offen: ein dickeres gibt Spiel dazu.',
  'play-after.line-closes': '{part}: {bare} − {thickness} = {play} {unit}, {place}.',
  'play-after.line-opens': '{part}: {bare} + {thickness} = {play} {unit}, {place}.',
  'play-after.line-none': '{part}: {bare} ist weniger als {thickness}, es bleibt also nichts: {place}.',

  'measuring.count': '{count}',
  'measuring.length': '{value} {unit}',
  'measuring.nothing': '–',
  'measuring.readings': '{readings} {unit}',
  'measuring.plates-apply': '{count, plural, one {Drucklamelle} other {Drucklamellen}}',
  'measuring.plates-friction': '{count, plural, one {Belaglamelle} other {Belaglamellen}}',
  'measuring.plates-steel': '{count, plural, one {Stahllamelle} other {Stahllamellen}}',
  'measuring.plates-waved': '{count, plural, one {Wellfeder} other {Wellfedern}}',
  'measuring.plates-dished': '{count, plural, one {Tellerfeder} other {Tellerfedern}}',
  'measuring.plates-backing': '{count, plural, one {Endlamelle} other {Endlamellen}}',
  'measuring.plates-washer': '{count, plural, one {Scheibe} other {Scheiben}}',
  'measuring.plates-snap-ring': '{count, plural, one {Sicherungsring} other {Sicherungsringe}}',

  'family.pack-clearance': 'Lüftspiel eines Pakets',
  'pack-clearance.prompt':
    '{stack}: vom Anschlag des Kolbens bis zur fernen Flanke der Ringnut sind es hier {room} {unit}. {waves, select, flat {Federnde Lamellen zählen flach gedrückt. } free {Federnde Lamellen zählen unbelastet. } other {}}Wie viel Lüftspiel bleibt damit, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'pack-clearance.how-many': 'Wie viele',
  'pack-clearance.each': 'Je',
  'pack-clearance.free': 'Unbelastet',
  'pack-clearance.line': '{count} {kind} × {each} = {all} {unit}.',
  'pack-clearance.row': '{room} − {height} = {clearance} {unit}.',
  'pack-clearance.reason': 'Das Lüftspiel ist der Raum weniger jede Lamelle darin, der Ring eingeschlossen.',

  'family.impossible-reading': 'Zahlen, die nicht stimmen können',
  'impossible-reading.prompt':
    '{fit}: fünf Notizen von der Werkbank. Ein dickeres Teil nimmt Spiel weg, eins zu eins; Messungen sind auf {tolerance} {unit} genau. Welche davon können nicht stimmen?',
  'impossible-reading.note': 'Grenzen {low} bis {high}. Gemessen {reading}.',
  'impossible-reading.note-then':
    'Grenzen {low} bis {high}. Gemessen {reading}; dann {play} {unit}, mit {part}.',
  'impossible-reading.row':
    'Eine Notiz kann nicht stimmen, wenn ihre eigenen Zahlen einander widersprechen, wie auch die Grenzen sind.',
  'impossible-reading.reason':
    'Spiel und Teil zusammen sind der Raum, und der Raum bleibt gleich; ohne Auswahlteil ist mindestens so viel Spiel da wie mit einem.',
  'impossible-reading.because-sound':
    'Notiz {number}: {first} + {was} − {put} = {expected}, wie gemessen. Das kann sein.',
  'impossible-reading.because-out':
    'Notiz {number}: {first} + {was} − {put} = {expected}, wie gemessen. {play} liegt nicht in {low} bis {high}, aber es kann sein.',
  'impossible-reading.because-none-in':
    'Notiz {number}: {first} ohne Auswahlteil lässt Raum für ein Teil. Das kann sein.',
  'impossible-reading.because-limits-swapped':
    'Notiz {number}: die untere Grenze, {low}, liegt über der oberen, {high}.',
  'impossible-reading.because-sum-disagrees':
    'Notiz {number}: {first} + {was} − {put} = {expected}, nicht {play}.',
  'impossible-reading.because-play-exceeds-depth':
    'Notiz {number}: {play} ist mehr als der ganze Raum, {first} + {was} = {room}.',
  'impossible-reading.because-stack-exceeds-depth':
    'Notiz {number}: Raum ist für {first} + {was} = {room}; ein Teil mit {put} geht nicht hinein.',
  'impossible-reading.because-bare-below-limits':
    'Notiz {number}: {first} ohne Auswahlteil liegt schon unter {low}, und ein Teil nähme nur noch mehr weg. Etwas sitzt nicht auf.',

  'family.mean-reading': 'Mittelwert mehrerer Messungen',
  'mean-reading.prompt':
    '{fit}: viermal gemessen, je eine Viertelumdrehung weiter: {readings}. Wie groß ist der Mittelwert, in {unit, select, in {Zoll} other {{unit}}}? Bis {tolerance} Abweichung gilt als richtig.',
  'mean-reading.row': '{sum} = {total}; {total} ÷ {count} = {mean} {unit}.',
  'mean-reading.reason': 'Alle Messungen zählen gleich; eine hohe und eine niedrige heben sich also auf.',

  'family.repeat-readings': 'Messungen, die zusammenpassen oder nicht',
  'repeat-readings.prompt':
    '{fit}: Grenzen {low} bis {high} {unit}; Messungen dürfen {spread} {unit} auseinander liegen. Jede Zeile wurde an einem Getriebe je eine Viertelumdrehung weiter gemessen. Was folgt aus jeder?',
  'repeat-readings.accept': 'gut: in den Grenzen',
  'repeat-readings.reseat': 'Teile neu aufsetzen und noch einmal messen',
  'repeat-readings.out-of-limits': 'außerhalb der Grenzen: ein anderes Teil',
  'repeat-readings.row':
    'Zuerst die Spanne, größte weniger kleinste: bei mehr als {spread} {unit} folgt noch nichts.',
  'repeat-readings.reason': 'Erst dann der Mittelwert, verglichen mit den Grenzen.',
  'repeat-readings.line-accept':
    '{highest} − {lowest} = {spread}, nicht mehr als {allowed}. ({sum}) ÷ {count} = {mean} {unit}, in den Grenzen.',
  'repeat-readings.line-reseat':
    '{highest} − {lowest} = {spread} {unit}, mehr als {allowed}: nicht aufgesetzt, oder nicht jedes Mal gleich.',
  'repeat-readings.line-out-of-limits':
    '{highest} − {lowest} = {spread}, nicht mehr als {allowed}. ({sum}) ÷ {count} = {mean} {unit}, außerhalb der Grenzen.',

  'family.unit-convert': 'Maßeinheiten umrechnen',
  'unit-convert.prompt':
    '{value} {unit}, {of}: was ist das in {to, select, in {Zoll} other {{to}}}? {decimals, plural, =0 {Ganze Zahl} =1 {Eine Nachkommastelle} =2 {Zwei Nachkommastellen} =3 {Drei Nachkommastellen} other {# Nachkommastellen}}; bis {tolerance} Abweichung gilt als richtig. {rule}',
  'unit-convert.pressure-of': 'größter Schaltdruck von {element}',
  'unit-convert.limit-of': 'eine Grenze von {fit}',
  'unit-convert.fill-of': 'Trockenfüllmenge von {fluid}',
  'unit-convert.refill-of': 'Füllmenge von {fluid} nach dem Ablassen',
  'unit-convert.level-of': '{fluid} beim Prüfen des Ölstands',
  'unit-convert.rule': '1 {large} {exact, select, yes {=} other {≈}} {factor} {small}.',
  'unit-convert.rule-none': '',
  'unit-convert.rule-temperature': '°F = °C × 9 ÷ 5 + 32.',
  'unit-convert.work-times': '{value} × {factor} = {shown} {unit}.',
  'unit-convert.work-over': '{value} ÷ {factor} = {shown} {unit}.',
  'unit-convert.work-fahrenheit': '{value} × 9 ÷ 5 + 32 = {shown} °F.',
  'unit-convert.work-celsius': '({value} − 32) × 5 ÷ 9 = {shown} °C.',
  'unit-convert.reason-size':
    '1 {from} ist {more, select, yes {mehr als 1 {to}, die Zahl wird also größer.} other {weniger als 1 {to}, die Zahl wird also kleiner.}}',
  'unit-convert.reason-zero':
    'Die Skalen beginnen bei verschiedenen Nullen, die 32 kommt also einmal hinein: nach dem Strecken auf °F, vor dem Schrumpfen auf °C.',
  'unit-convert.twelve':
    '1 lbf·ft sind 12 lbf·in. Ein Schlüssel, der in der falschen Einheit eingestellt ist, liegt um das Zwölffache daneben.',
  'unit-convert.quarts':
    'Ein US-Quart sind 0,946 L, ein imperiales Quart 1,137 L: frage, welches gemeint ist.',

  'family.crowfoot-setting': 'Drehmomentschlüssel mit Aufsatz',
  'crowfoot-setting.prompt':
    '{torque}: {target} {unit}. Ein Aufsatz, {adapter} {length} vom Vierkant zur Schraube, sitzt auf einem Drehmomentschlüssel mit {lever} {length} von der Hand zum Vierkant, {angle, select, 0 {gerade nach vorn} 90 {im rechten Winkel} 180 {gerade zurückgeklappt} 45 {45° schräg nach vorn (Kosinus 0,707)} other {135° schräg nach hinten (Kosinus −0,707)}}. Worauf wird der Schlüssel eingestellt? Bis {tolerance} {unit} Abweichung gilt als richtig.',
  'crowfoot-setting.row': '{target} × {lever} ÷ {reach} = {setting} {unit}.',
  'crowfoot-setting.reason':
    '{angle, select, 90 {Im rechten Winkel ist die Schraube nicht weiter von der Hand weg: eingestellt wird das Anzugsmoment selbst.} other {An der Schraube wirkt die Zugkraft mal der Abstand von der Hand zur Schraube; der Schlüssel kennt nur den Abstand von der Hand zum Vierkant.}}',
  'crowfoot-setting.reach':
    'Von der Hand zur Schraube, in einer Linie: {lever} + {adapter} × {cosine} = {reach} {length}.',
} as const;
