import { faultsThatFit } from '../../../../src/core/questions/families/diagnosis/faults-that-fit.ts';
import { impossibleSuspects } from '../../../../src/core/questions/families/diagnosis/impossible-suspects.ts';
import { oneCause } from '../../../../src/core/questions/families/diagnosis/one-cause.ts';
import { describeRules } from '../rules.ts';

describeRules(faultsThatFit, { seeds: 60 });
describeRules(oneCause, { seeds: 60 });
describeRules(impossibleSuspects, { seeds: 60 });
