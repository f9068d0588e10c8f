/** The one list of rules. A new rule is one file in `rules/` and one line here. */
import type { Rule } from './finding.ts'
import { artworkKept } from './rules/artwork.ts'
import { balanceNearWall, headDrops } from './rules/balance.ts'
import { betweenOpenings } from './rules/between-openings.ts'
import { blankLength, firstPost, headOnBlank, postsForStrings, postsOnHead } from './rules/blank.ts'
import { toolFits, webLeft } from './rules/cutting.ts'
import { rimDepth, rimLedge, roomUnderHardware, roomUnderNeck } from './rules/depth.ts'
import { boardBehindLastFret, boardOverLid } from './rules/frets.ts'
import { groundHoleClear } from './rules/ground-hole.ts'
import { HARDWARE_RULES } from './rules/hardware.ts'
import { HEAD_RULES } from './rules/head.ts'
import { insideClearOfNeck, insideFits, neckBlockHeight, openingToInside } from './rules/inside.ts'
import { hingeParallel, lidClears, lidReach } from './rules/lid-opens.ts'
import { neckLeft } from './rules/neck-left.ts'
import { actionChange, headRoot, neckBow, neckGivesWay, neckStress, nutRise } from './rules/neck-load.ts'
import { openingToEdge } from './rules/opening-to-edge.ts'
import { openingToNeck } from './rules/opening-to-neck.ts'
import { openingToWall } from './rules/opening-to-wall.ts'
import {
  braceClear,
  breakAngleAtNut,
  breakAngleAtSaddle,
  breakAngleHeavy,
  lidSag,
} from './rules/over-saddle.ts'
import {
  actionAsWanted,
  saddleFreeBand,
  saddleLineOff,
  saddleLow,
  saddleTall,
} from './rules/saddle-height.ts'
import { saddleOnLid, saddleSetback, saddleToOpening, saddleToTailWall } from './rules/saddle-place.ts'
import { sideAngleAtNut, sideAngleAtSaddle } from './rules/side-angles.ts'
import { boxHasInside, handStated, neckBeforeBox, placeFollowed } from './rules/stated.ts'
import { stringInsidePickup } from './rules/string-inside-pickup.ts'
import { stringToBoardEdge } from './rules/string-to-board-edge.ts'
import { stringsApartAtNut, stringsApartAtSaddle } from './rules/strings-apart.ts'
import {
  pullSlackest,
  pullTightest,
  stringBreaking,
  stringCanBeMade,
  stringHigh,
  stringSlack,
  tuningStated,
} from './rules/strings-pull.ts'
import { boxTwist, outOfSquare, surveyAgrees, surveyMakesBox } from './rules/survey.ts'
import {
  tailHolesForStrings,
  tailHoleToEnd,
  tailHoleWeb,
  tailOtherCounts,
  tailToHold,
} from './rules/tail-holes.ts'
import { wallBesideSlot, wallUnderSlot } from './rules/wall-slot.ts'
import {
  wiringGrounded,
  wiringHeard,
  wiringJack,
  wiringKnobs,
  wiringShorted,
  wiringSilent,
  wiringStrings,
} from './rules/wiring.ts'

export const RULES: readonly Rule[] = [
  handStated,
  placeFollowed,
  boxHasInside,
  neckBeforeBox,
  surveyMakesBox,
  surveyAgrees,
  outOfSquare,
  boxTwist,
  openingToEdge,
  betweenOpenings,
  openingToNeck,
  openingToWall,
  stringToBoardEdge,
  stringsApartAtNut,
  stringsApartAtSaddle,
  stringInsidePickup,
  saddleOnLid,
  saddleToTailWall,
  saddleToOpening,
  saddleSetback,
  sideAngleAtSaddle,
  sideAngleAtNut,
  wallUnderSlot,
  wallBesideSlot,
  neckLeft,
  roomUnderNeck,
  roomUnderHardware,
  rimDepth,
  rimLedge,
  boardBehindLastFret,
  boardOverLid,
  tailHoleWeb,
  tailHoleToEnd,
  tailToHold,
  tailHolesForStrings,
  tailOtherCounts,
  groundHoleClear,
  blankLength,
  headOnBlank,
  firstPost,
  postsOnHead,
  postsForStrings,
  ...HEAD_RULES,
  tuningStated,
  stringCanBeMade,
  stringBreaking,
  stringSlack,
  stringHigh,
  pullSlackest,
  pullTightest,
  neckBow,
  nutRise,
  actionChange,
  neckGivesWay,
  neckStress,
  headRoot,
  breakAngleAtSaddle,
  breakAngleHeavy,
  breakAngleAtNut,
  lidSag,
  braceClear,
  saddleLow,
  saddleTall,
  actionAsWanted,
  saddleLineOff,
  saddleFreeBand,
  toolFits,
  webLeft,
  ...HARDWARE_RULES,
  balanceNearWall,
  headDrops,
  wiringJack,
  wiringGrounded,
  wiringStrings,
  wiringShorted,
  wiringHeard,
  wiringKnobs,
  wiringSilent,
  lidClears,
  lidReach,
  hingeParallel,
  openingToInside,
  insideFits,
  insideClearOfNeck,
  neckBlockHeight,
  artworkKept,
]

/** Rules about the instrument itself, that never name a thing put on a face: not asked while one is moved. */
export const NEVER_OF_THINGS: ReadonlySet<Rule> = new Set([
  handStated,
  boxHasInside,
  neckBeforeBox,
  surveyMakesBox,
  surveyAgrees,
  outOfSquare,
  boxTwist,
  stringToBoardEdge,
  stringsApartAtNut,
  stringsApartAtSaddle,
  saddleOnLid,
  saddleToTailWall,
  saddleSetback,
  sideAngleAtSaddle,
  sideAngleAtNut,
  wallUnderSlot,
  wallBesideSlot,
  boardBehindLastFret,
  boardOverLid,
  tailHoleWeb,
  tailHoleToEnd,
  tailToHold,
  tailHolesForStrings,
  tailOtherCounts,
  blankLength,
  headOnBlank,
  firstPost,
  postsOnHead,
  postsForStrings,
  tuningStated,
  stringCanBeMade,
  stringBreaking,
  stringSlack,
  stringHigh,
  pullSlackest,
  pullTightest,
  neckBow,
  nutRise,
  actionChange,
  neckGivesWay,
  neckStress,
  headRoot,
  breakAngleAtSaddle,
  breakAngleHeavy,
  breakAngleAtNut,
  lidSag,
  saddleLow,
  saddleTall,
  actionAsWanted,
  saddleLineOff,
  saddleFreeBand,
])
