/** Questions on windings, sensors and wires. */
export const ELECTRICAL = {
  'electrical.ohms': '{ohms} Ω',
  'electrical.open': 'abierto',
  'electrical.degrees': '{celsius} °C',
  'electrical.band': '{low} a {high} Ω',
  'electrical.reading-at': '{ohms} Ω a {celsius} °C',
  'electrical.place-low': 'bajo el rango',
  'electrical.place-in': 'dentro del rango',
  'electrical.place-high': 'sobre el rango',
  'electrical.solenoid-pin': '{solenoid} (pin {pin})',

  'family.heat-pairs': 'Resistencia y calor',
  'heat-pairs.prompt':
    '{part}: se leyó su resistencia a varias temperaturas y se revolvieron las lecturas. ¿Cuál va con cuál?',
  'heat-pairs.winding': 'Bobina de cobre de {solenoid}',
  'heat-pairs.row-falls': 'Cuanto más caliente, menos mide.',
  'heat-pairs.row-rises': 'Cuanto más caliente, más mide.',
  'heat-pairs.reason-sensor':
    'Los sensores de temperatura se hacen de los dos modos; el cuaderno dice cómo es este.',
  'heat-pairs.reason-copper': 'El cobre siempre mide más cuando está más caliente.',

  'family.winding-at-heat': 'Una bobina caliente y fría',
  'winding-at-heat.prompt-warm':
    'La bobina de cobre de {solenoid} mide {ohms} Ω a 20 °C. El cobre cambia 0.393 % de ese valor por cada °C. ¿Cuánto mide a {celsius} °C, en ohms? Dos decimales; vale ± {tolerance}.',
  'winding-at-heat.prompt-back':
    'La bobina de cobre de {solenoid} mide {ohms} Ω a {celsius} °C. El cobre cambia 0.393 % de su valor a 20 °C por cada °C. ¿Cuánto mediría a 20 °C, en ohms? Dos decimales; vale ± {tolerance}.',
  'winding-at-heat.factor': 'A {celsius} °C, {over} desde 20: 1 + 0.00393 × {over} = {factor}.',
  'winding-at-heat.reason-warm': '{ohms} × {factor} = {value} Ω.',
  'winding-at-heat.reason-back': '{ohms} ÷ {factor} = {value} Ω.',
  'winding-at-heat.percent': 'A {celsius} °C se aparta {percent} % de su valor a 20 °C.',
  'winding-at-heat.copper': 'Esto vale solo para la bobina: los cables y el conector casi no cambian.',

  'family.winding-verdict': 'Una bobina juzgada por su rango',
  'winding-verdict.prompt':
    'El rango de {solenoid} es de {low} a {high} Ω a 20 °C. Su bobina de cobre se leyó a otras temperaturas (0.393 % del valor a 20 °C por cada °C). ¿Dónde queda cada lectura, llevada a 20 °C?',
  'winding-verdict.row': 'Divide cada lectura entre 1 + 0.00393 × (temperatura − 20) y mira el rango.',
  'winding-verdict.reason': 'El rango, {low} a {high} Ω, vale para 20 °C y para nada más.',
  'winding-verdict.line': '{ohms} Ω a {celsius} °C: {ohms} ÷ {factor} = {at20} Ω a 20 °C, {place}.',

  'family.pin-pairs': 'Ohms entre dos pines',
  'pin-pairs.prompt':
    'Leído contra el pin común {common}: {one} {first} Ω, {other} {second} Ω. ¿Qué muestra el multímetro entre los pines de los dos solenoides, en ohms? Vale ± {tolerance}.',
  'pin-pairs.row': '{first} + {second} = {sum} Ω.',
  'pin-pairs.reason':
    'De un pin, por su bobina, hasta donde entra el pin {common}, y de ahí por la otra bobina: una después de la otra.',
  'pin-pairs.parallel':
    'Lado a lado serían {parallel} Ω, menos que cualquiera de las dos: no es el camino aquí.',

  'family.winding-fault': 'Qué falla muestran las lecturas',
  'winding-fault.prompt':
    'Bobinas que comparten el pin {common}, leídas a 20 °C con los cables quitados{case, select, unread {; contra la carcasa no se leyó nada} other {}}. ¿Cuáles de estas concuerdan con todas las lecturas?',
  'winding-fault.band': 'Rango',
  'winding-fault.to-common': 'Contra el pin {common}',
  'winding-fault.to-case': 'Contra la carcasa',
  'winding-fault.sound': 'sin falla',
  'winding-fault.open': '{one}: bobina o cable cortado',
  'winding-fault.turns-shorted': '{one}: algunas espiras en corto',
  'winding-fault.shorted': '{one}: en corto de punta a punta',
  'winding-fault.high-resistance': '{one}: una mala unión en su cable',
  'winding-fault.to-ground': '{one}: su pin toca la carcasa',
  'winding-fault.pins-joined': '{one} y {other}: pines unidos',
  'winding-fault.common-open': 'pin {common}: cable cortado',
  'winding-fault.common-to-ground': 'el pin {common} toca la carcasa',
  'winding-fault.row':
    'Una falla concuerda cuando cada lectura es la que ella daría, y ninguna habla en contra.',
  'winding-fault.reason-case':
    'Contra el pin común cada bobina se muestra a sí misma; contra la carcasa todo está abierto hasta que algo la toque.',
  'winding-fault.reason-no-case':
    'Contra el pin común cada bobina se muestra a sí misma. Lo que toca la carcasa no se ve ahí.',
  'winding-fault.reason-ground': 'Contra el pin común cada bobina se muestra a sí misma.',
  'winding-fault.fits': 'Concuerda: {fault}. {would}',
  'winding-fault.does-not-fit': 'No concuerda: {fault}. {would}',
  'winding-fault.would-sound': 'Cada bobina dentro de su rango contra el pin común, y contra nada más.',
  'winding-fault.would-open': 'Esa bobina abierta, las demás dentro de su rango.',
  'winding-fault.would-turns-shorted': 'Esa bobina bajo su rango, las demás dentro.',
  'winding-fault.would-shorted': 'Esa bobina en cero, las demás dentro de su rango.',
  'winding-fault.would-high-resistance': 'Esa bobina sobre su rango, las demás dentro.',
  'winding-fault.would-to-ground':
    'Cada bobina dentro de su rango; ese pin en cero contra la carcasa, los demás llegan ahí por dos bobinas.',
  'winding-fault.would-pins-joined':
    'Las dos con la misma lectura, menor que cualquiera sola: quedan lado a lado.',
  'winding-fault.would-common-open': 'Cada bobina abierta contra el pin {common}.',
  'winding-fault.would-common-to-ground':
    'Cada bobina dentro de su rango, igual contra el pin {common} que contra la carcasa.',

  'family.solenoid-current': 'Corriente de un solenoide',
  'solenoid-current.prompt-full':
    '{solenoid} mide {ohms} Ω y recibe {volts} V, sin contar la caída del driver. ¿Qué corriente pasa cuando está conectado todo el tiempo, en amperes? Dos decimales; vale ± {tolerance}.',
  'solenoid-current.prompt-mean':
    '{solenoid} mide {ohms} Ω y se conmuta rápido, conectado el {percent} % del tiempo, con {volts} V. Un camino de rueda libre mantiene la corriente; no se cuentan la caída del driver ni el rizado. ¿Cuál es la corriente media, en amperes? Dos decimales; vale ± {tolerance}.',
  'solenoid-current.row': '{volts} V ÷ {ohms} Ω = {amperes} A cuando está conectado.',
  'solenoid-current.reason-full': 'Volts entre ohms son amperes.',
  'solenoid-current.reason-mean': '{percent} % de {full} A = {amperes} A.',
  'solenoid-current.holds':
    'Es la media porque el camino de rueda libre deja seguir la corriente mientras el driver está apagado.',

  'family.driver-pin': 'Voltaje en el pin de un driver',
  'driver-pin.prompt-low':
    '{solenoid} recibe voltaje de batería; el módulo conmuta el lado bajo. ¿Qué hay en el pin del módulo, medido contra tierra?',
  'driver-pin.prompt-high':
    '{solenoid} va a tierra por su otro extremo; el módulo conmuta el lado alto. ¿Qué hay en el pin del módulo, medido contra tierra?',
  'driver-pin.pin': 'En el pin',
  'driver-pin.case-sound': 'driver {driver}, cable bien',
  'driver-pin.case-open': 'driver {driver}, cable cortado',
  'driver-pin.case-short-to-ground': 'driver {driver}, cable toca tierra',
  'driver-pin.case-short-to-supply': 'driver {driver}, cable toca voltaje de batería',
  'driver-pin.driver-off': 'apagado',
  'driver-pin.driver-on': 'encendido',
  'driver-pin.level-supply': 'voltaje de batería',
  'driver-pin.level-ground': '0 V',
  'driver-pin.level-floating': 'nada lo sujeta',
  'driver-pin.row-low':
    'Apagado, la bobina lleva voltaje de batería al pin; encendido, el driver baja el pin a tierra.',
  'driver-pin.row-high':
    'Apagado, la bobina mantiene el pin en tierra; encendido, el driver le pone voltaje de batería.',
  'driver-pin.reason':
    'Con el cable cortado solo queda el driver para sujetar el pin; un cable que toca algo queda sujeto por eso.',
  'driver-pin.line':
    '{case}: {level}{powered, select, yes {, pasa corriente por la bobina} other {}}{overloaded, select, yes {, y el driver trabaja contra el corto} other {}}.',

  'family.sensor-frequency': 'Velocidad y frecuencia',
  'sensor-frequency.prompt-hertz':
    '{sensor} está sobre una rueda de {teeth} dientes en {shaft} y da un pulso por cada diente. El eje gira a {given} rpm. ¿Cuántos pulsos por segundo son, en Hz? Vale ± {tolerance}.',
  'sensor-frequency.prompt-rpm':
    '{sensor} está sobre una rueda de {teeth} dientes en {shaft} y da un pulso por cada diente. Da {given} Hz. ¿A qué velocidad gira el eje, en rpm? Vale ± {tolerance}.',
  'sensor-frequency.row-hertz': '{teeth} × {given} ÷ 60 = {value} Hz.',
  'sensor-frequency.row-rpm': '{given} × 60 ÷ {teeth} = {value} rpm.',
  'sensor-frequency.reason':
    '{teeth} pulsos por vuelta; el 60 está porque la velocidad va por minuto y la frecuencia por segundo.',
} as const;
