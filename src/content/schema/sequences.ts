/** Sequences in a deck file. */
import { HAZARDS } from '../../core/unit/cautions.ts';
import { z } from '../zod.ts';
import { id, ids, name, provenance, torque, words } from './fields.ts';

const step = z
  .strictObject({
    id: id('Id of the step within its sequence.'),
    text: words('What is done, in the words of the shop.'),
    turned: words('What is done when the sequence is turned round: "Set the pump in."').optional(),
    after: z
      .array(
        z.strictObject({
          step: id('A step of this sequence that must be done before.'),
          reason: words('Why it must be done before.'),
        }),
      )
      .max(60)
      .describe('What must be done before this step, and why.')
      .optional(),
    tool: words('Tool the step needs.').optional(),
    torque: torque('Tightening torque.').optional(),
    tightens: id('One of `torques`, in place of a torque of its own.').optional(),
    hazards: z.array(z.enum(HAZARDS)).max(HAZARDS.length).describe('Dangers of this step.').optional(),
    ifSkipped: words('What comes of it when the step is left out.').optional(),
    ...provenance,
  })
  .meta({ id: 'step', description: 'One step of a sequence.' });

const relations = (description: string) =>
  z
    .array(
      z.strictObject({
        earlier: id('The step of the assembly that is done before.'),
        later: id('The step of the assembly that is done after.'),
        reason: words('Why.'),
      }),
    )
    .max(200)
    .describe(description)
    .optional();

const assembly = z
  .strictObject({
    name: words('What the assembly is called.').optional(),
    leftOut: z
      .array(z.strictObject({ step: id('A step of this sequence.'), reason: words('Why.') }))
      .max(200)
      .describe('Steps that are done only when stripping.')
      .optional(),
    added: z
      .array(step)
      .max(200)
      .describe('Steps that are done only when assembling; `after` names steps of the assembly.')
      .optional(),
    lifted: relations('Relations that stripping has and assembly, turned round, does not.'),
    imposed: relations('Relations that only the assembly has.'),
  })
  .describe('The sequence can be turned round: assembly is stripping backward, with these exceptions.');

const check = z
  .strictObject({
    id: id('Id of the check within its sequence.'),
    text: words('What is measured or looked at.'),
    during: z.enum(['strip', 'assembly']).describe('Whether while stripping or while assembling.'),
    fit: id('The fit it measures.').optional(),
    needs: ids('Steps that must be done for it.'),
    closedBy: ids('Steps any of which makes it impossible.'),
    ...provenance,
  })
  .meta({ id: 'check', description: 'Something that can be measured only for part of the work.' });

export const sequence = z
  .strictObject({
    id: id('Id of the sequence.'),
    name,
    steps: z.array(step).max(200).describe('The steps, in one order that works.'),
    assembly: assembly.optional(),
    checks: z
      .array(check)
      .max(60)
      .describe('What can be measured or looked at only for part of the work.')
      .optional(),
    ...provenance,
  })
  .meta({ id: 'sequence', description: 'Work in steps, with must-be-before relations.' });
