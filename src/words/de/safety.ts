/** Questions on working safely, in German. Each defers to the maker's information, local law and supervision. */
export const SAFETY = {
  'hazard.roll-away': 'Wegrollen',
  'hazard.moving-test': 'Bewegung bei einer Prüfung',
  'hazard.hot-fluid': 'heißes Öl',
  'hazard.pressure': 'Öl unter Druck',
  'hazard.lift': 'fallende Last',
  'hazard.handling': 'schwer und rutschig',
  'hazard.air': 'Druckluft',
  'hazard.stored-energy': 'Federn und Ringe',
  'hazard.rotating': 'drehende Teile',
  'hazard.electrical': 'Strom',
  'hazard.high-voltage': 'Hochvolt',
  'hazard.chemicals': 'Chemikalien',
  'hazard.heat': 'Hitze',
  'hazard.road-test': 'Straßenverkehr',
  'hazard-harm.roll-away':
    'Ein rollendes Fahrzeug quetscht, wer darunter oder davor ist. Lege vor der ersten Schraube Keile unter, in beide Richtungen.',
  'hazard-harm.moving-test':
    'Ein Getriebe, das treibt, wenn niemand damit rechnet, bewegt das Fahrzeug. Bremsen festhalten, niemand davor oder dahinter.',
  'hazard-harm.hot-fluid':
    'Öl mit Betriebstemperatur verbrüht durch Stoff hindurch. Lass es abkühlen, Gesicht zur Seite.',
  'hazard-harm.pressure':
    'Ein Ölstrahl geht durch die Haut; das ist sofort ein Notfall, wie klein es auch aussieht. Lass zuerst den Druck ab.',
  'hazard-harm.lift': 'Was hängt, kann fallen. Geprüftes Gerät, Sicherungen eingerastet, niemand darunter.',
  'hazard-harm.handling': 'Was schwer und ölig ist, rutscht. Zu zweit, oder mit dem Kran.',
  'hazard-harm.air':
    'Luft treibt Kolben heraus und Schmutz in die Augen. Wenig Druck, geregelt, Lappen über die Bohrung, Augen und Ohren geschützt.',
  'hazard-harm.stored-energy':
    'Ein Ring oder eine Feder, die loslässt, fliegt. Gerade niederdrücken, Gesicht weg, ganz entspannen lassen.',
  'hazard-harm.rotating': 'Was dreht, fängt Stoff, Haare und Handschuhe. Abstand halten, nichts Loses.',
  'hazard-harm.electrical':
    'Ein Kurzschluss brennt, und eine Batterie gast. Halte dich beim Abschalten an die Reihenfolge des Herstellers.',
  'hazard-harm.high-voltage':
    'Hochvolt tötet. Nur wer dafür ausgebildet und befugt ist, und nur, wenn Spannungsfreiheit festgestellt ist.',
  'hazard-harm.chemicals':
    'Lösemittel und Öl schaden Haut, Lunge und Boden. Handschuhe, Lüftung, und das Sicherheitsdatenblatt zur Hand.',
  'hazard-harm.heat': 'Heiße Teile verbrennen und setzen Öl in Brand. Handschuhe, keine Flamme nahe am Öl.',
  'hazard-harm.road-test':
    'Wer fährt, fährt; ablesen tut jemand anders. Nur, wie Recht, Versicherung und Hersteller es erlauben.',

  'family.step-hazards': 'Die Gefahr eines Schritts',
  'step-hazards.prompt': 'Welche Gefahr gehört zu welchem Schritt?',
  'step-hazards.row': '{step} Gefahr: {hazard}.',

  'family.stored-energy': 'Was fliegen kann',
  'stored-energy.prompt':
    'Bei welchen dieser Schritte kann etwas herausfliegen oder herausspritzen, wenn es nicht vorher gehalten wird?',
  'stored-energy.row':
    '{count, plural, one {Bei # dieser Schritte wird etwas losgelassen.} other {Bei # dieser Schritte wird etwas losgelassen.}}',
  'stored-energy.reason':
    'Ein gespannter Ring, eine zusammengedrückte Feder, Luft oder Öl hinter einem Kolben: sie behalten ihre Kraft, bis ein Schritt sie freigibt.',

  'family.roll-away': 'Was das Fahrzeug noch hält',
  'roll-away.prompt':
    'Ein Fahrzeug steht am Hang, Motor aus. Da ist: {holding}. Nicht da ist: {missing}. Welche einzelnen Handlungen ließen nichts übrig, was es hält?',
  'roll-away.holds-pawl': 'Wählhebel in Parkstellung',
  'roll-away.holds-brake': 'Feststellbremse angezogen und geprüft',
  'roll-away.holds-chocks': 'Keile an den Rädern in beide Richtungen',
  'roll-away.not-pawl': 'Parkstellung',
  'roll-away.not-brake': 'Feststellbremse',
  'roll-away.not-chocks': 'Keile',
  'roll-away.action-draw-shaft': 'die Antriebswellen ausbauen',
  'roll-away.action-lever-out-of-park': 'den Schalthebel am Getriebe von Hand bewegen',
  'roll-away.action-unit-down': 'das Getriebe ausbauen',
  'roll-away.action-brake-off': 'die Feststellbremse lösen',
  'roll-away.action-chocks-away': 'die Keile wegnehmen',
  'roll-away.action-drain-fluid': 'das Öl ablassen',
  'roll-away.action-pan-off': 'die Ölwanne abnehmen',
  'roll-away.row': 'Nur das hält: {holding}. Was das wegnimmt, lässt nichts übrig.',
  'roll-away.reason-pawl':
    'Die Sperrklinke hält den Abtrieb im Getriebe fest. Zu den Rädern kommt sie nur über die Wellen: ohne Wellen, ohne Getriebe oder mit bewegtem Hebel hält nichts.',
  'roll-away.reason-brake':
    'Nur die Feststellbremse hält. Die Parkstellung ist nicht eingelegt, und an den Rädern liegt nichts.',
  'roll-away.reason-chocks':
    'Nur die Keile halten. Die Parkstellung ist nicht eingelegt, und die Bremse ist los.',
  'roll-away.pawl':
    'Verlass dich nie auf die Parkstellung allein: sie ist das erste, was diese Arbeit auseinandernimmt.',
  'roll-away.two-means':
    'An einem echten Fahrzeug: Keile in beide Richtungen und eine geprüfte Bremse vor der ersten Schraube, auf ebenem Boden. Die Herstellerangaben und die Regeln deiner Werkstatt gehen vor.',

  'family.sling-load': 'Last in einem Strang des Anschlagmittels',
  'sling-load.prompt':
    'Last: {name}, {mass} {unit}. Sie hängt an zwei gleichen Strängen, jeder {angle}° zur Waagerechten. Wie viel trägt jeder Strang, in {unit}? Eine Nachkommastelle; bis {tolerance} Abweichung gilt als richtig.',
  'sling-load.row': '{mass} ÷ (2 × sin {angle}°) = {mass} ÷ (2 × {sine}) = {load} {unit}.',
  'sling-load.reason':
    'Beide Stränge zusammen ziehen so viel nach oben wie das Gewicht, aber ein schräger Strang zieht auch zur Seite: je flacher, desto mehr trägt er.',
  'sling-load.label':
    'Vergleiche es mit dem Anhänger des Anschlagmittels für diesen Winkel. Ohne lesbaren Anhänger wird es nicht benutzt.',

  'family.look-up-first': 'Benutzen oder erst nachschlagen',
  'look-up-first.prompt':
    'Diese Zahlen stehen in den Notizen der Werkstatt. Welche dürfen so benutzt werden, und welche müssen erst in den Herstellerangaben nachgeschlagen werden?',
  'look-up-first.torque': 'Anzugsmoment, {name}',
  'look-up-first.figure': 'Zahl',
  'look-up-first.source': 'Aus',
  'look-up-first.verified': 'Geprüft von',
  'look-up-first.by': '{by}, {on}',
  'look-up-first.nobody': 'noch niemand',
  'look-up-first.as-noted': 'so benutzen',
  'look-up-first.look-up': 'erst nachschlagen',
  'look-up-first.row': 'Von niemandem geprüft: {names}.',
  'look-up-first.reason':
    'Eine Notiz sagt, was jemand gelesen oder gemessen hat. Erst ein zweiter Blick macht daraus eine Zahl, mit der man arbeitet.',
  'look-up-first.maker-wins':
    'Wo eine Notiz und die Herstellerangaben auseinandergehen, gelten die Herstellerangaben.',
} as const;
