/**
 * What a fault does to the classic trains, worked by hand from the chart (trains, teeth and their sources:
 * tests/published/trains.json). The speeds at the head of each table are worked once, per turn of the input, to
 * three places; the reason beside each row is all that is then needed.
 *
 * Two rules do most of it. In a range without an element to spare, an element that fails leaves a shaft loose. An
 * element more ties up unless the shafts it joins turn alike in that range already, and the speeds tell that.
 * "none" is no drive, "ties" tied up, "as 1" becomes range 1; rows that are not named work.
 */
export interface WorkedTrain {
  readonly train: string;
  /** Fault, what it does, why. */
  readonly rows: readonly (readonly [fault: string, does: string, why: string])[];
}

export const WORKED: readonly WorkedTrain[] = [
  {
    // 28 sf + 62 out = 90 x (front: x its carrier), 45 sr + 83 x = 128 out (rear: x its ring)
    // UD in–sr, OD in–x, RV in–sf, B24 holds sf, LR holds x
    // 1 UD LR:  sr 1, x 0      -> out 45/128 = .352, sf = -62/28 out = -.778
    // 2 UD B24: sr 1, sf 0     -> x = 62/90 out; 45 = (128 - 57.18) out, out .635, x .438
    // 3 UD OD:  all 1
    // 4 OD B24: x 1, sf 0      -> out 90/62 = 1.452, sr = (128 out - 83)/45 = 2.285
    // R RV LR:  sf 1, x 0      -> out -28/62 = -.452, sr = 128/45 out = -1.285
    train: 'four-range-two-crossed-sets',
    rows: [
      ['element-fails:UD', 'none: 1 2 3', 'nothing turns sr, and each range uses just two elements'],
      ['element-fails:OD', 'none: 3 4', 'x is loose'],
      ['element-fails:RV', 'none: R', 'nothing turns sf'],
      ['element-fails:B24', 'none: 2 4', 'sf is loose'],
      ['element-fails:LR', 'none: 1 R', 'x is loose'],
      ['element-stuck:UD', 'ties: 4 R', 'sr 2.285 and -1.285, not 1'],
      ['element-stuck:OD', 'ties: 1 2 R', 'x 0, .438 and 0, not 1'],
      ['element-stuck:RV', 'ties: 1 2 4', 'sf -.778, 0 and 0, not 1; in 3 it is 1'],
      ['element-stuck:B24', 'ties: 1 3 R', 'sf -.778, 1 and 1, not 0'],
      ['element-stuck:LR', 'ties: 2 3 4', 'x .438, 1 and 1, not 0'],
      ['gearset-stripped:F', 'none: 2 4 R', '45 sr + 83 x = 128 out is left: 1 and 3 know sr and x, the others do not'],
      ['gearset-stripped:R', 'none: 1 2 3', '28 sf + 62 out = 90 x is left: 4 and R know sf and x, the others do not'],
    ],
  },
  {
    // 33 sod + 79 rod = 112 in, 42 sc + 79 rf = 121 out, 33 sc + 79 out = 112 cr
    // C0 in–sod, B0 holds sod, C1 rod–rf, C2 rod–sc, B1 holds sc, B3 holds cr
    // C0 makes rod 1; B0 makes it 112/79 = 1.418
    // 1 C0 C1 B3: rf 1, cr 0  -> sc = -79/33 out; 79 = (121 + 100.5) out, out .357, sc -.854
    // 2 C0 C1 B1: rf 1, sc 0  -> out 79/121 = .653, cr .461
    // 3 C0 C1 C2: all 1       4 B0 C1 C2: all behind rod at 1.418, sod 0
    // R C0 C2 B3: sc 1, cr 0  -> out -33/79 = -.418, rf = (121 out - 42)/79 = -1.171
    train: 'four-range-simpson-overdrive',
    rows: [
      ['element-fails:C0', 'none: 1 2 3 R', 'sod is loose, so rod is'],
      ['element-fails:B0', 'none: 4', 'sod is loose, so rod is'],
      ['element-fails:C1', 'none: 1 2 3 4', 'rf is loose'],
      ['element-fails:C2', 'none: 3 4 R', 'sc is loose'],
      ['element-fails:B1', 'none: 2', 'sc is loose'],
      ['element-fails:B3', 'none: 1 R', 'cr is loose'],
      ['element-stuck:C0', 'ties: 4', 'sod held by B0'],
      ['element-stuck:B0', 'ties: 1 2 3 R', 'sod turns at 1 with C0'],
      ['element-stuck:C1', 'ties: R', 'rf -1.171 against rod 1'],
      ['element-stuck:C2', 'ties: 1 2', 'sc -.854 and 0 against rod 1'],
      ['element-stuck:B1', 'ties: 1 3 4 R', 'sc -.854, 1, 1.418 and 1, not 0'],
      ['element-stuck:B3', 'ties: 2 3 4', 'cr .461, 1 and 1.418, not 0'],
      ['gearset-stripped:OD', 'none: 1 2 3 4 R', 'the input reaches rod through it alone'],
      ['gearset-stripped:F', 'none: 1 2 3 4', '33 sc + 79 out = 112 cr is left: only R knows sc and cr'],
      ['gearset-stripped:R', 'none: 1 R', '42 sc + 79 rf = 121 out is left: 1 does not know sc, R does not know rf'],
    ],
  },
  {
    // 69 out - 24 s1 = 45 c, 30 s2 + 69 out = 99 c
    // C1 in–s1, C2 in–c, C3 in–s2, B1 holds s2, B2 holds c, F2 keeps c from turning backward
    // 1 C1 F2, 1m C1 B2: s1 1, c 0 -> out 24/69 = .348, s2 -.8
    // 2 C1 B1: s1 1, s2 0          -> 69 out = 99 c, 54 c = 24: c .444, out .638
    // 3 C1 C2: all 1
    // 4 C2 B1: c 1, s2 0           -> out 99/69 = 1.435, s1 54/24 = 2.25
    // R C3 B2: s2 1, c 0           -> out -.435, s1 69/24 out = -1.25
    // With s1 driven alone the load holds out back, which pushes c backward: F2 takes it, and that is 1.
    train: 'ravigneaux-4-a',
    rows: [
      ['element-fails:C1', 'none: 1 1m 2 3', 'nothing turns s1; in 3 the carrier turns, and s1, s2 are loose'],
      ['element-fails:C2', 'none: 4 | as 1: 3', '3 keeps s1 driven alone; 4 has nothing driven'],
      ['element-fails:C3', 'none: R', 'nothing driven'],
      ['element-fails:B1', 'none: 4 | as 1: 2', '2 keeps s1 driven alone; in 4 s2 is loose'],
      ['element-fails:B2', 'none: R', '1m: F2 holds c. R: out stalled, 30 = 99 c, so c is pushed forward, past F2'],
      ['element-fails:F2', 'none: 1', 'c is loose; elsewhere it ran free or B2 holds c'],
      ['element-stuck:C1', 'ties: 4 R | as 1: N', 's1 2.25 and -1.25, not 1; N has then s1 driven alone'],
      ['element-stuck:C2', 'ties: 1m 2 R | as 3: 1', 'c 0, .444 and 0, not 1; in 1 s1 and c turn at 1 and F2 runs free'],
      ['element-stuck:C3', 'ties: 1m 2 4 | as 3: 1', 's2 -.8, 0 and 0, not 1; in 1 s1 and s2 turn at 1, so all does'],
      ['element-stuck:B1', 'ties: 1m 3 R | as 2: 1', 's2 -.8, 1 and 1, not 0; in 1 c runs to .444, past F2'],
      ['element-stuck:B2', 'ties: 2 3 4', 'c .444, 1 and 1, not 0'],
      ['element-stuck:F2', 'ties: 2 3 4', 'locked it is a brake on c'],
      ['one-way-reversed:F2', 'none: 1 | ties: 2 3 4', 'it lets c turn backward in 1, and keeps it from .444, 1 and 1'],
      ['gearset-stripped:Psmall', 'none: 1 1m 2 3', '30 s2 + 69 out = 99 c is left: 4 and R know s2 and c'],
      ['gearset-stripped:Plarge', 'none: 4 R | as 1: 2', '69 out - 24 s1 = 45 c is left: B1 holds a loose sun, so 2 has s1 driven alone'],
    ],
  },
  {
    // 71 in = 108 c1, c1 .657; 85 out - 31 s2 = 54 c, 38 s3 + 85 out = 123 c
    // A c1–s2, B c1–s3, E in–c, C holds s3, D holds c
    // 1 A D: s2 .657, c 0  -> out .240, s3 = -85/38 out = -.536
    // 2 A C: s2 .657, s3 0 -> 69 c = 31 s2: c .295, out .427
    // 3 A B: all behind c1 at .657
    // 4 A E: s2 .657, c 1  -> out .875, s3 1.280
    // 5 B E: s3 .657, c 1  -> out 1.153, s2 1.420
    // 6 C E: s3 0, c 1     -> out 1.447, s2 69/31 = 2.226
    // R B D: s3 .657, c 0  -> out -.294, s2 -.806
    train: 'lepelletier-6-a',
    rows: [
      ['element-fails:A', 'none: 1 2 3 4', 's2 is loose'],
      ['element-fails:B', 'none: 3 5 R', 's3 is loose'],
      ['element-fails:E', 'none: 4 5 6', 'c is loose'],
      ['element-fails:C', 'none: 2 6', 's3 is loose'],
      ['element-fails:D', 'none: 1 R', 'c is loose'],
      ['element-stuck:A', 'ties: 5 6 R', 's2 1.420, 2.226 and -.806, not .657'],
      ['element-stuck:B', 'ties: 1 2 4 6', 's3 -.536, 0, 1.280 and 0, not .657'],
      ['element-stuck:E', 'ties: 1 2 3 R', 'c 0, .295, .657 and 0, not 1'],
      ['element-stuck:C', 'ties: 1 3 4 5 R', 's3 -.536, .657, 1.280, .657 and .657, not 0'],
      ['element-stuck:D', 'ties: 2 3 4 5 6', 'c .295, .657, 1, 1 and 1, not 0'],
      ['gearset-stripped:P1', 'none: 1 2 3 4 5 R', 'c1 is loose; only 6 does without it'],
      ['gearset-stripped:Psmall', 'none: 1 2 3 4', '38 s3 + 85 out = 123 c is left: 5, 6 and R know s3 and c'],
      ['gearset-stripped:Plarge', 'none: 2 3 5 6 R', '85 out - 31 s2 = 54 c is left: 1 and 4 know s2 and c'],
    ],
  },
  {
    // 50 s1 + 78 in = 128 x, 50 s2 + 90 x = 140 y, 30 s3 + 74 y = 104 out
    // K1 in–s1, K2 in–y, K3 s2–s3, B1 holds s1, B2 holds s3, B3 holds y
    // F1 keeps s1 from turning backward, F2 keeps s2 from falling behind s3
    // 1 B1 B2 K3: s1 0, x .609; s2 = s3 0 -> y .392, out .279
    // 2 K1 B2 K3: s1 1, x 1; s2 = s3 0    -> y .643, out .457
    // 3 K1 K2 B2: x 1, y 1, s3 0          -> s2 1, out .712
    // 4 K1 K2 K3: all 1
    // 5 K2 K3 B1: x .609, y 1             -> s2 = s3 1.703, out 1.203
    // R1 B1 B3 K3: x .609, y 0            -> s2 = s3 -1.097, out -.316
    // R2 K1 B3 K3: x 1, y 0               -> s2 = s3 -1.8, out -.519
    // The load pushes s1 backward wherever y is to be driven through x, and F1 takes it.
    train: 'five-speed-3sets-a',
    rows: [
      ['element-fails:K1', 'none: 4 | as 1: 2 | as R1: R2', 'F1 takes s1 in 2 and R2; 3 knows y and s3 without it; in 4 s2 falls, x and s1 rise, past F1'],
      ['element-fails:K2', 'none: 4 5 | as 2: 3', 'y is loose; in 3 F2 keeps s2 with s3, which B2 holds, and that is 2'],
      ['element-fails:K3', 'none: 4 5', '1, 2: F2 keeps s2 at 0. 4, 5: s3 falls behind s2, past F2. R1, R2: the load pushes s3 forward onto F2'],
      ['element-fails:B1', 'none: 5', '1, R1: F1 holds s1. 5: s2 falls, x and s1 rise, past F1'],
      ['element-fails:B2', 'none: 1 2 3', 's3 is loose'],
      ['element-fails:B3', 'none: R1 R2', 'y is loose'],
      ['element-fails:F1', '', 'B1 holds s1 wherever it must stand'],
      ['element-fails:F2', '', 'K3 joins s2 and s3, but in 3, where it ran free'],
      ['element-stuck:K1', 'ties: 1 5 R1', 's1 held by B1'],
      ['element-stuck:K2', 'ties: 1 2 R1 R2', 'y .392, .643, 0 and 0, not 1'],
      ['element-stuck:K3', 'ties: 3', 's2 1 against s3 0'],
      ['element-stuck:B1', 'ties: 2 3 4 R2', 's1 turns at 1 with K1'],
      ['element-stuck:B2', 'ties: 4 5 R1 R2 | as 1: N', 's3 1, 1.703, -1.097 and -1.8, not 0; in N F1 and F2 do the rest of 1'],
      ['element-stuck:B3', 'ties: 1 2 3 4 5 | as R1: N', 'y .392, .643, 1, 1 and 1, not 0; in N F1 and F2 do the rest of R1'],
      ['element-stuck:F1', 'ties: 2 3 4 R2', 'locked it is a brake on s1'],
      ['element-stuck:F2', 'ties: 3', 'locked it is K3'],
      ['one-way-reversed:F1', 'ties: 2 3 4 R2', 's1 is to turn forward there and cannot; elsewhere B1 holds it'],
      ['one-way-reversed:F2', 'ties: 3', 's2 is to run ahead of s3 and cannot; elsewhere K3 joins them'],
      ['gearset-stripped:PF', 'none: 1 2 4 5 R1 R2', 'x is not driven; only 3 knows y and s3 without it'],
      ['gearset-stripped:PR', 'none: 1 2 4 5 R1 R2', 's2 is off; only 3 knows y and s3 without it'],
      ['gearset-stripped:PM', 'none: 1 2 3 4 5 R1 R2', 'the output sits on it alone'],
    ],
  },
  {
    // 42 fs + 86 in = 128 fc, 86 in + 110 fr = 196 fc, 46 rs + 114 fc = 160 rc, 28 ms + 76 rc = 104 out
    // K1 in–fs, K2 in–rc, K3 rs–ms, B1 holds fs, B2 holds ms, B3 holds fr, BR holds rc
    // B3: fc 86/196 = .439, fs -.710.   B1: fc 86/128 = .672, fr .415.   K1: fc 1, fr 1
    // 1 K3 B2 B3: rs = ms 0 -> rc .313      2 K3 B1 B2: rs = ms 0 -> rc .479
    // 3 K1 K3 B2: rs = ms 0 -> rc .713      4 K1 K2 B2: rc 1, ms 0, rs 1
    // 5 K1 K2 K3: all 1                     6 K2 K3 B1: rc 1 -> rs = ms 1.813
    // 7 K2 K3 B3: rc 1 -> rs = ms 2.391     R1 K3 B3 BR: rc 0 -> rs = ms -1.087
    // R2 K3 B1 BR: rc 0 -> rs = ms -1.665
    train: 'seven-speed-reversed-ravigneaux',
    rows: [
      ['element-fails:K1', 'none: 3 5', 'fc is loose; 4 knows rc and ms without it'],
      ['element-fails:K2', 'none: 4 5 6 7', 'rc is loose'],
      ['element-fails:K3', 'none: 1 2 3 5 6 7 R1 R2', 'rs or ms is loose; 4 does not use it'],
      ['element-fails:B1', 'none: 2 6 R2', 'fc is loose'],
      ['element-fails:B2', 'none: 1 2 3 4', 'ms is loose'],
      ['element-fails:B3', 'none: 1 7 R1', 'fc is loose'],
      ['element-fails:BR', 'none: R1 R2', 'rc is loose'],
      ['element-stuck:K1', 'ties: 1 2 6 7 R1 R2', 'fs -.710 or 0, not 1'],
      ['element-stuck:K2', 'ties: 1 2 3 R1 R2', 'rc .313, .479, .713, 0 and 0, not 1'],
      ['element-stuck:K3', 'ties: 4', 'rs 1 against ms 0'],
      ['element-stuck:B1', 'ties: 1 3 4 5 7 R1', 'fs -.710 or 1, not 0'],
      ['element-stuck:B2', 'ties: 5 6 7 R1 R2', 'ms 1, 1.813, 2.391, -1.087 and -1.665, not 0'],
      ['element-stuck:B3', 'ties: 2 3 4 5 6 R2', 'fr .415 or 1, not 0'],
      ['element-stuck:BR', 'ties: 1 2 3 4 5 6 7', 'rc turns in every forward range'],
      ['gearset-stripped:PA', 'none: 2 3 5 6 R2', 'fs drives nothing; B3 still settles fc, and 4 does not need it'],
      ['gearset-stripped:PB', 'none: 1 7 R1', 'fr holds nothing'],
      ['gearset-stripped:PR', 'none: 1 2 3 5 6 7 R1 R2', 'rs, rc and fc are apart; 4 knows rc and ms'],
      ['gearset-stripped:PM', 'none: 1 2 3 4 5 6 7 R1 R2', 'the output sits on it alone'],
    ],
  },
  {
    // 78 r1 = 40 in, r1 .513; 70 out - 26 s3 = 44 c, 34 s2 + 70 out = 104 c
    // C1 r1–s3, C2 in–c, C3 r1–s2, C4 in–s2, B1 holds s2, B2 holds c, F1 keeps c from turning backward
    // 1 C1 B2: s3 .513, c 0   -> out .190, s2 -.392
    // 2 C1 B1: s3 .513, s2 0  -> 60 c = 26 s3: c .222
    // 3 C1 C3: all behind r1 at .513
    // 4 C1 C4: s3 .513, s2 1  -> 60 c = 34 + 26 s3: c .789
    // 5 C1 C2: s3 .513, c 1   -> out .819, s2 1.373
    // 6 C2 C4: all 1
    // 7 C2 C3: c 1, s2 .513   -> out 1.237, s3 1.637
    // 8 C2 B1: c 1, s2 0      -> out 1.486, s3 2.308
    // R1 C3 B2: s2 .513, c 0  -> s3 -.671     R2 C4 B2: s2 1, c 0 -> s3 -1.308
    // With s3 driven alone the load pushes c backward, and F1 takes it: that is 1.
    train: 'eight-speed-dp-ravigneaux-b',
    rows: [
      ['element-fails:C1', 'none: 1 2 3 4 5', 's3 is loose; with s2 driven alone c is pushed forward, past F1'],
      ['element-fails:C2', 'none: 6 7 8 | as 1: 5', '5 keeps s3 driven alone; 6, 7 and 8 have c loose'],
      ['element-fails:C3', 'none: 7 R1 | as 1: 3', '3 keeps s3 driven alone; in 7 and R1 s2 is loose'],
      ['element-fails:C4', 'none: 6 R2 | as 1: 4', '4 keeps s3 driven alone; in 6 and R2 s2 is loose'],
      ['element-fails:B1', 'none: 8 | as 1: 2', '2 keeps s3 driven alone; in 8 s2 is loose'],
      ['element-fails:B2', 'none: R1 R2', '1: F1 holds c. R1, R2: c is pushed forward, past F1'],
      ['element-fails:F1', '', 'B2 holds c in 1'],
      ['element-stuck:C1', 'ties: 6 7 8 R1 R2 | as 1: N', 's3 1, 1.637, 2.308, -.671 and -1.308, not .513; N has then s3 driven alone'],
      ['element-stuck:C2', 'ties: 1 2 3 4 R1 R2', 'c 0, .222, .513, .789, 0 and 0, not 1'],
      ['element-stuck:C3', 'ties: 1 2 4 5 6 8 R2', 's2 -.392, 0, 1, 1.373, 1, 0 and 1, not .513'],
      ['element-stuck:C4', 'ties: 1 2 3 5 7 8 R1', 's2 -.392, 0, .513, 1.373, .513, 0 and .513, not 1'],
      ['element-stuck:B1', 'ties: 1 3 4 5 6 7 R1 R2', 's2 turns in all of them'],
      ['element-stuck:B2', 'ties: 2 3 4 5 6 7 8', 'c turns in all of them'],
      ['element-stuck:F1', 'ties: 2 3 4 5 6 7 8', 'locked it is B2'],
      ['one-way-reversed:F1', 'ties: 2 3 4 5 6 7 8', 'c is to turn forward and cannot; in 1, R1 and R2 B2 holds it'],
      ['gearset-stripped:P1', 'none: 1 2 3 4 5 7 R1', 'r1 is loose; 6, 8 and R2 do without it'],
      ['gearset-stripped:Psmall', 'none: 1 2 3 4 5', '34 s2 + 70 out = 104 c is left: 6, 7, 8, R1 and R2 know s2 and c'],
      ['gearset-stripped:Plarge', 'none: 6 7 8 R1 R2 | as 1: 2 3 4', '70 out - 26 s3 = 44 c is left: 1 and 5 know s3 and c, and 2, 3, 4 have s3 driven alone'],
    ],
  },
]; // biome-ignore format: a fault a line
