/** Questions on shifts, in German: beyond the next range, how they hand over, speeds before and after. */
export const SHIFTS = {
  'family.skip-shift': 'Was sich bei einem weiten Sprung ändert',
  'skip-shift.prompt':
    'Das Getriebe schaltet direkt von Gang {from} nach Gang {to}. Was macht jedes Schaltelement?',
  'skip-shift.reason':
    'Es zählen nur die erste und die letzte Zeile. {count, plural, one {Was Gang {ranges} nutzt} other {Was die Gänge {ranges} nutzen}}, wird übersprungen.',

  'family.shift-kind': 'Wie eine Schaltung übergibt',
  'shift-kind.prompt': 'Wie übergibt jede dieser Schaltungen, wenn der Motor zieht?',
  'shift-kind.lets-go': 'ein Freilauf lässt von selbst los, kein Abstimmen',
  'shift-kind.catches': 'ein Freilauf fängt von selbst, kein Abstimmen',
  'shift-kind.exchange': 'ein Schaltelement gegen ein anderes, muss abgestimmt sein',
  'shift-kind.comes-on-alone': 'ein Schaltelement schließt, nichts lässt los',
  'shift-kind.line-lets-go': 'Gang {from} nach {to}: {on}; von da an überholt {oneWays}.',
  'shift-kind.line-catches': 'Gang {from} nach {to}: {off}; die Last übernimmt {oneWays}.',
  'shift-kind.line-exchange': 'Gang {from} nach {to}: {off}, {on}, und kein Freilauf springt ein.',
  'shift-kind.line-comes-on-alone': 'Gang {from} nach {to}: {on}.',
  'shift-kind.reason':
    'Ein Freilauf braucht kein Abstimmen: er lässt los, sobald seine Welle vorläuft, und fängt, sobald sie zurückfällt. Zwei Reibelemente müssen sich die Last einen Augenblick lang teilen.',

  'family.output-speed': 'Drehzahl des Abtriebs',
  'output-speed.prompt':
    'Gang {range}, Übersetzung {ratio} : 1, Antrieb mit {input} U/min. Wie schnell dreht der Abtrieb? Ganze U/min; bis {tolerance} Abweichung gilt als richtig. Minus, wenn er rückwärts dreht.',
  'output-speed.prompt-road':
    'Gang {range}, Übersetzung {ratio} : 1, Antrieb mit {input} U/min, kein Schlupf. Die Achsübersetzung ist {final} : 1, und ein Rad rollt {tyre} m je Umdrehung. Wie schnell fährt das Fahrzeug, in km/h? Bis {tolerance} Abweichung gilt als richtig.',
  'output-speed.row': '{input} ÷ {ratio} = {output} U/min am Abtrieb.',
  'output-speed.reason':
    'Übersetzung ist Antriebsdrehzahl ÷ Abtriebsdrehzahl; die Abtriebsdrehzahl ist also Antriebsdrehzahl ÷ Übersetzung.',
  'output-speed.reason-road':
    'Die Achsübersetzung teilt noch einmal, und was die Räder in einer Minute rollen, mal 60, rollen sie in einer Stunde: {speed} km/h.',
  'output-speed.wheels': '{output} ÷ {final} = {wheels} U/min an den Rädern.',
  'output-speed.road': '{wheels} U/min × {tyre} m × 60 ÷ 1000 = {speed} km/h.',

  'family.shift-guard': 'Schaltungen, die den Antrieb überdrehen',
  'shift-guard.prompt':
    'Gang {range}: der Abtrieb dreht mit {output} U/min, der Antrieb mit {input} und der Motor, über den Wandler, mit {engine}. Der Antrieb darf höchstens mit {limit} U/min drehen. Was würde er bei dieser Abtriebsdrehzahl in jedem anderen Gang tun?',
  'shift-guard.slower': 'langsamer drehen als jetzt',
  'shift-guard.within': 'schneller drehen, unter der Grenze',
  'shift-guard.too-fast': 'zu schnell drehen',
  'shift-guard.row': 'Über {limit} U/min in: {count, plural, =0 {keinem davon} other {{ranges}}}.',
  'shift-guard.reason':
    'Der Abtrieb behält beim Schalten seine Drehzahl, der Antrieb dreht also mit {output} × Übersetzung. Der Motor spielt dabei keine Rolle.',
  'shift-guard.line': 'Gang {range}: {output} × {ratio} = {speed} U/min.',
} as const;
