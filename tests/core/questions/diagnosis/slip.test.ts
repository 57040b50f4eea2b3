import { plateShort } from '../../../../src/core/questions/families/diagnosis/plate-short.ts';
import { slipsFirst } from '../../../../src/core/questions/families/diagnosis/slips-first.ts';
import { describeRules } from '../rules.ts';

describeRules(slipsFirst, { seeds: 40 });
describeRules(plateShort, { seeds: 40 });
