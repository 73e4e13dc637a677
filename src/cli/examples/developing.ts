export const developing = {
  time: `  $ wetside time --at 70.9F --point "18C 11:30" --point "20C 9:30" --point "22C 8:00" --point "24C 6:45"
  Develop 8:16 in place of 9:30 at 20.0 °C.
  Give or take 8 s by the sheet and the law; 0.5 °C of thermometer error is 21 s.`,
  dose: `  < 0:00 20.0C\\n8:00 24.0C
  $ wetside dose --point "20C 8:00" --coefficient 2.5 --explain
  8:00 in the developer did as much as 9:40 at 20.0 °C: 121 % of 8:00.
  The sheet gives one time, at 20.0 °C; this is 4.0 °C away from it, by the law alone.

  8:00 at 20.0 °C is where the sheet starts from                                          [the sheet]
  ten degrees warmer develops 2.50 times as fast (exponential law)                        [the sheet]
  0:00 to 8:00, 20.0 °C to 24.0 °C: 9:40                                                  [the readings, straight between them; the rate summed by Gauss–Legendre]
  = 9:40                                                                                  [all of it added]
  Mean rate 1.2079, summed moment by moment: warm minutes gain more than cold ones lose.  [that over the time it took]`,
  score: `  $ wetside score three-bath-water-stop --developer-time 8:00
  Three baths, water stop: nine baths in 38:59; hands are busy for 10:43 of it.
     0:00  Developer in
     1:15  Developer: turn for 5 s, 7 times, the last at 7:15
     8:05  Developer out, water stop in
     9:05  Water stop: turn for 18 s
     9:23  Water stop out, fix in
    10:51  Fix: turn for 5 s, 8 times, the last at 14:21
    11:56  Lid off
    12:26  Look for clearing
    14:41  Fix out, wash 1 in
    15:59  Wash 2: change the water
    20:17  Wash 3: change the water
    25:35  Wash 4: change the water
    30:53  Wash 5: change the water
    36:11  Wash 5 out, wetting agent in
    37:29  Wetting agent out
    37:39  Wipe or let run off
    37:59  Hang up`,
  thermometer: `  $ wetside thermometer --read 21.0C --check 20.4=20.0
  It reads 21.0 °C; the bath is 20.6 °C.`,
  table: `  < Corvane 400  18C  20C\\nEI 400  11½  9½
  $ wetside table
    1  The film: Corvane 400. Temperatures: 18 and 20 °C.
    2  At 400: 11:30 and 9:30 at 18 and 20 °C.
  2 times for 1 film.`,
} as const
