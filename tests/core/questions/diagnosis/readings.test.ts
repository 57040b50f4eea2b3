import { airCheck } from '../../../../src/core/questions/families/diagnosis/air-check.ts';
import { firstBreak } from '../../../../src/core/questions/families/diagnosis/first-break.ts';
import { slipOrRatio } from '../../../../src/core/questions/families/diagnosis/slip-or-ratio.ts';
import { describeRules } from '../rules.ts';

describeRules(firstBreak, { seeds: 40 });
describeRules(slipOrRatio, { seeds: 40 });
describeRules(airCheck, { seeds: 40 });
