/** Questions on working safely. Each defers to the maker's information, local law and qualified supervision. */
export const SAFETY = {
  'hazard.roll-away': 'rolling away',
  'hazard.moving-test': 'moving in a test',
  'hazard.hot-fluid': 'hot fluid',
  'hazard.pressure': 'oil under pressure',
  'hazard.lift': 'falling load',
  'hazard.handling': 'heavy and slippery',
  'hazard.air': 'compressed air',
  'hazard.stored-energy': 'springs and rings',
  'hazard.rotating': 'turning parts',
  'hazard.electrical': 'electricity',
  'hazard.high-voltage': 'high voltage',
  'hazard.chemicals': 'chemicals',
  'hazard.heat': 'heat',
  'hazard.road-test': 'road traffic',
  'hazard-harm.roll-away':
    'A vehicle that rolls crushes whoever is under or before it. Chock it, both ways, before the first bolt.',
  'hazard-harm.moving-test':
    'A unit that drives when nobody expects it moves the vehicle. Brakes held, nobody before or behind it.',
  'hazard-harm.hot-fluid': 'Fluid at working heat scalds through cloth. Let it cool, face aside.',
  'hazard-harm.pressure':
    'A jet of oil goes through skin; that is an emergency at once, however small it looks. Let the pressure off first.',
  'hazard-harm.lift': 'What hangs can fall. Rated gear, latches engaged, nobody beneath.',
  'hazard-harm.handling': 'What is heavy and oily slips. Two people, or the crane.',
  'hazard-harm.air':
    'Air drives pistons out and grit into eyes. Low and regulated, rag over the hole, glasses and ears covered.',
  'hazard-harm.stored-energy':
    'A ring or a spring that lets go flies. Press it down square, face away, let it out to its full length.',
  'hazard-harm.rotating': 'What turns catches cloth, hair and gloves. Stand clear, nothing loose.',
  'hazard-harm.electrical': 'A short burns, and a battery gases. Follow the maker’s order for switching off.',
  'hazard-harm.high-voltage':
    'It kills. Only people trained and authorised for it, with the system proved dead.',
  'hazard-harm.chemicals':
    'Solvent and oil harm skin, lungs and ground. Gloves, air, and the safety sheet at hand.',
  'hazard-harm.heat': 'Hot parts burn and set oil alight. Gloves, no flame near fluid.',
  'hazard-harm.road-test': 'The driver drives; somebody else reads. Only as law, insurance and maker allow.',

  'family.step-hazards': 'The danger of a step',
  'step-hazards.prompt': 'Which danger belongs to which step?',
  'step-hazards.row': '{step} Danger: {hazard}.',

  'family.stored-energy': 'What can fly',
  'stored-energy.prompt':
    'At which of these steps can something fly or spray out, unless it is held back first?',
  'stored-energy.row':
    '{count, plural, one {# of these steps lets} other {# of these steps let}} something go.',
  'stored-energy.reason':
    'A ring under tension, a spring pressed together, air or oil behind a piston: they keep their force until a step lets it go.',

  'family.roll-away': 'What still holds the vehicle',
  'roll-away.prompt':
    'A vehicle stands on a slope, engine off. In place: {holding}. Not in place: {missing}. Which single actions would leave nothing holding it?',
  'roll-away.holds-pawl': 'lever in park',
  'roll-away.holds-brake': 'parking brake on, proved to hold',
  'roll-away.holds-chocks': 'wheels chocked both ways',
  'roll-away.not-pawl': 'park',
  'roll-away.not-brake': 'the parking brake',
  'roll-away.not-chocks': 'the chocks',
  'roll-away.action-draw-shaft': 'take the drive shafts out',
  'roll-away.action-lever-out-of-park': 'move the range lever on the unit by hand',
  'roll-away.action-unit-down': 'take the unit out',
  'roll-away.action-brake-off': 'let the parking brake off',
  'roll-away.action-chocks-away': 'take the chocks away',
  'roll-away.action-drain-fluid': 'drain the fluid',
  'roll-away.action-pan-off': 'take the pan off',
  'roll-away.row': 'Only this holds: {holding}. Whatever takes it away leaves nothing.',
  'roll-away.reason-pawl':
    'The pawl locks the output inside the unit. It reaches the wheels through the shafts: no shafts, no unit, or the lever moved, and nothing holds.',
  'roll-away.reason-brake':
    'Only the parking brake holds. Park is not engaged, and nothing stands at the wheels.',
  'roll-away.reason-chocks': 'Only the chocks hold. Park is not engaged, and the brake is off.',
  'roll-away.pawl': 'Never rely on park alone: it is the first thing that this work takes apart.',
  'roll-away.two-means':
    'On a real vehicle: chocks both ways and a proven brake before the first bolt, on a level floor. The maker’s information and your shop’s rules come first.',

  'family.sling-load': 'Load in a sling leg',
  'sling-load.prompt':
    'The {name} weighs {mass} {unit} and hangs on two equal legs of a sling, each at {angle}° to level. How much does each leg carry, in {unit}? One decimal; within {tolerance} is right.',
  'sling-load.row': '{mass} ÷ (2 × sin {angle}°) = {mass} ÷ (2 × {sine}) = {load} {unit}.',
  'sling-load.reason':
    'Both legs together pull up as much as the weight, but a slanting leg pulls sideways too: the flatter, the more it carries.',
  'sling-load.label':
    'Hold it against the label of the sling for that angle. With no label that can be read, the sling is not used.',

  'family.look-up-first': 'Use it, or look it up first',
  'look-up-first.prompt':
    'These figures stand in the shop’s notes. Which may be used as noted, and which must be looked up in the maker’s information first?',
  'look-up-first.torque': 'torque, {name}',
  'look-up-first.figure': 'Figure',
  'look-up-first.source': 'From',
  'look-up-first.verified': 'Checked by',
  'look-up-first.by': '{by}, {on}',
  'look-up-first.nobody': 'nobody yet',
  'look-up-first.as-noted': 'use as noted',
  'look-up-first.look-up': 'look it up first',
  'look-up-first.row': 'Nobody has checked: {names}.',
  'look-up-first.reason':
    'A note says what somebody read or measured. Only a second look makes it a figure to work by.',
  'look-up-first.maker-wins':
    'Where a note and the maker’s information differ, the maker’s information wins.',
} as const;
