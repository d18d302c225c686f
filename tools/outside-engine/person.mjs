// A person's body from content/body, after docs/models/body.md section 2: every segment scaled by its own length,
// masses and mass centers after de Leva. Reads the files and nothing of the Body room.
import { readFileSync } from 'node:fs';
import { spline } from './spline.mjs';

const add = (a, b) => a.map((v, i) => v + b[i]);
const times = (s, a) => a.map(v => s * v);
const toward = (a, b, t) => a.map((v, i) => v + t * (b[i] - v));
const mirrored = a => [a[0], a[1], -a[2]];
const mirroredAxis = a => [-a[0], -a[1], a[2]];
const midline = a => [a[0], a[1], 0];

/** Which body part's length scales a segment, and which length of the published skeleton it is compared with. */
const measures = {
  pelvis: ['shoulderToHip', 'trunk'], torso: ['shoulderToHip', 'trunk'], head: ['head', 'head'],
  thigh: ['thigh', 'thigh'], shank: ['shank', 'shank'], talus: ['foot', 'foot'], foot: ['foot', 'foot'], toes: ['foot', 'foot'],
  upperArm: ['upperArm', 'upperArm'], ulna: ['forearm', 'forearm'], radius: ['forearm', 'forearm'], hand: ['hand', 'hand'],
};

export function readContent(folder) {
  const read = name => JSON.parse(readFileSync(`${folder}/body/${name}.json`, 'utf8'));
  return { skeleton: read('skeleton'), segments: read('segments'), muscles: read('muscles') };
}

/** Segments of both sides, parents first: name, parent, offset, slide, joints, mass and mass center, factor. */
export function buildPerson(content, { sex, statureM, massKg }) {
  const { skeleton } = content;
  const parts = Object.fromEntries(content.segments.tables.find(t => t.sex === sex).parts.map(p => [p.part, p]));
  const lengthOf = part => parts[part].lengthFractionOfStature * statureM;
  const factor = kind => lengthOf(measures[kind][0]) / skeleton.referenceLengthsM[measures[kind][1]];
  const data = Object.fromEntries(skeleton.segments.map(s => [s.kind, s]));
  const masses = massesOf(data, parts, lengthOf, factor, skeleton.referenceLengthsM, massKg);
  const segments = [];
  for (const s of skeleton.segments) {
    for (const side of s.bothSides ? ['right', 'left'] : [null]) {
      const left = side === 'left';
      const flip = left ? mirrored : v => v;
      const parent = s.parent === null ? null : nameOf(s.parent, data[s.parent].bothSides ? side : null);
      segments.push({
        name: nameOf(s.kind, side), kind: s.kind, side, parent, factor: factor(s.kind),
        offset: s.parent === null ? [0, 0, 0] : flip(times(factor(s.parent), s.offsetM)),
        slide: s.slideX ? slideOf(s, factor(s.parent)) : null,
        joints: s.coordinates.map(c => ({
          name: nameOf(c.motion, side), motion: c.motion, axis: left ? mirroredAxis(c.axis) : c.axis,
        })),
        mass: masses[s.kind]?.mass ?? 0,
        center: flip(masses[s.kind]?.center ?? [0, 0, 0]),
      });
    }
  }
  return segments;
}

export const nameOf = (what, side) => side ? `${what} ${side}` : what;

/** How the knee's center travels in the thigh: forward and upward place and its slope, at the person's size. */
function slideOf(segment, factor) {
  const x = spline(segment.slideX);
  const y = spline(segment.slideY);
  return angle => ({
    at: [factor * x(angle).value, factor * y(angle).value, 0],
    slope: [factor * x(angle).slope, factor * y(angle).slope],
  });
}

/** Right side and midline. */
function massesOf(data, parts, lengthOf, factor, reference, massKg) {
  const mass = part => parts[part].massPercent / 100 * massKg;
  const share = part => parts[part].centerPercentFromOrigin / 100;
  const offset = kind => times(factor(data[kind].parent), data[kind].offsetM);

  // Limbs: on the line between the joint centers of the neutral pose.
  const knee = add(offset('shank'), slideOf(data.shank, factor('thigh'))(0).at);
  const wrist = add(offset('radius'), offset('hand'));
  const limb = (part, end) => ({ mass: mass(part), center: times(share(part), end) });

  // Trunk: heights over the hip line as parts of the line from mid-hip to mid-shoulder, in the pelvis frame.
  const hip = midline(offset('thigh'));
  const back = offset('torso');
  const shoulder = add(back, midline(offset('upperArm')));
  let below = 0;
  const height = {};
  for (const part of ['lowerTrunk', 'middleTrunk', 'upperTrunk']) {
    height[part] = (below + (1 - share(part)) * lengthOf(part)) / lengthOf('shoulderToHip');
    below += lengthOf(part);
  }
  const at = part => toward(hip, shoulder, height[part]);
  const torsoMass = mass('middleTrunk') + mass('upperTrunk');
  const torsoCenter = toward(at('middleTrunk'), at('upperTrunk'), mass('upperTrunk') / torsoMass);
  return {
    pelvis: { mass: mass('lowerTrunk'), center: at('lowerTrunk') },
    torso: { mass: torsoMass, center: add(torsoCenter, times(-1, back)) },
    head: { mass: mass('head'), center: [0, (1 - share('head')) * lengthOf('head'), 0] },
    thigh: limb('thigh', knee),
    shank: limb('shank', offset('talus')),
    // Share of the heel-to-toe length in front of the heel, 1.5 cm over the frame at the published size.
    foot: { mass: mass('foot'), center: times(factor('foot'), [share('foot') * reference.foot, 0.015, 0]) },
    upperArm: limb('upperArm', offset('ulna')),
    ulna: limb('forearm', wrist),
    hand: { mass: mass('hand'), center: [0, -share('hand') * lengthOf('hand'), 0] },
  };
}

/** All lines, right then left: name and points with place, condition and travel at the person's size. */
export function buildMuscles(content, segments) {
  const lines = [...content.muscles.muscles, ...content.muscles.band.parts];
  const find = (kind, side) => segments.find(s => s.kind === kind && (s.side === null || s.side === side));
  return ['right', 'left'].flatMap(side => lines.map(line => ({
    name: nameOf(line.id, side),
    points: line.points.map(p => {
      const segment = find(p.segment, side);
      const place = v => times(segment.factor, side === 'left' ? mirrored(v) : v);
      const joint = motion => nameOf(motion, segments.some(s => s.side === side && s.joints.some(j => j.motion === motion)) ? side : null);
      const travel = p.moving && { joint: joint(p.moving.motion), along: ['x', 'y', 'z'].map(k => spline(p.moving[k])) };
      return {
        segment: segment.name,
        joint: travel?.joint,
        present: angles => !p.when || (degrees(angles[joint(p.when.motion)]) >= p.when.fromDeg && degrees(angles[joint(p.when.motion)]) <= p.when.toDeg),
        at: angles => place(travel ? travel.along.map(s => s(angles[travel.joint]).value) : p.atM),
      };
    }),
  })));
}

const degrees = radians => radians * 180 / Math.PI;
