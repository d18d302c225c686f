// Makes tests/Body.Tests/OutsideEngine/fixtures: what a general physics engine says of whole-body poses. See README.md.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { engineVersion, quaternion, run, turn, turnBack } from './engine.mjs';
import { buildMuscles, buildPerson, readContent } from './person.mjs';
import { poses } from './poses.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const script = JSON.parse(readFileSync(join(here, 'package.json'), 'utf8'));
const people = [
  { file: 'woman', sex: 'female', statureM: 1.70, massKg: 65 },
  { file: 'man', sex: 'male', statureM: 1.80, massKg: 80 },
];
// Step of the knee between two pose files, rad. Small, because the knots of the moving points lie 1.7e-4 rad apart at 0.
const step = 2e-6;
const radians = degrees => degrees * Math.PI / 180;
const matrix = ([w, x, y, z]) => [
  w * w + x * x - y * y - z * z, 2 * (x * y - w * z), 2 * (x * z + w * y),
  2 * (x * y + w * z), w * w - x * x + y * y - z * z, 2 * (y * z - w * x),
  2 * (x * z - w * y), 2 * (y * z + w * x), w * w - x * x - y * y + z * z,
];
const largest = { energy: 0, frames: 0, fixed: 0, other: 0 };
const note = (what, value, limit) => {
  largest[what] = Math.max(largest[what], Math.abs(value));
  if (!(Math.abs(value) <= limit)) throw new Error(`The engine disagrees with itself: ${what} ${value}`);
};

const content = readContent(join(root, 'content'));
const folder = join(root, 'tests', 'Body.Tests', 'OutsideEngine', 'fixtures');
mkdirSync(folder, { recursive: true });
for (const person of people) {
  const segments = buildPerson(content, person);
  const muscles = buildMuscles(content, segments);
  const joints = segments.flatMap(s => s.joints.map(j => j.name));
  const crossed = muscles.map(line => crossedBy(segments, line));
  const fixture = {
    about: 'Made by tools/outside-engine; never by hand. Lengths m, angles rad, forces N, moments N m; signs of the model. Rotations by rows.',
    script: script.version, package: `mujoco-js ${script.dependencies['mujoco-js']}`, engine: engineVersion,
    person: { sex: person.sex, statureM: person.statureM, massKg: person.massKg },
    segments: segments.map(s => s.name), coordinates: joints, muscles: muscles.map(m => m.name),
    armCoordinates: crossed.map(names => names.map(n => joints.indexOf(n))),
    poses: poses.map(p => solve(segments, muscles, crossed, joints, p)),
  };
  const file = join(folder, `${person.file}.json`);
  writeFileSync(file, text(fixture));
  console.log(`${file}: ${fixture.poses.length} poses, ${fixture.segments.length} segments, ${joints.length} coordinates, ${muscles.length} lines`);
}
console.log('Largest differences between the engine and itself:', largest);

/** Coordinates between the first and the last segment of a line, inner ones first. */
function crossedBy(segments, line) {
  const names = [];
  const first = line.points[0].segment;
  for (let s = segments.find(t => t.name === line.points.at(-1).segment); s.name !== first; s = segments.find(t => t.name === s.parent))
    names.unshift(...s.joints.map(j => j.name));
  return names;
}

function anglesOf(segments, pose) {
  return Object.fromEntries(segments.flatMap(s => s.joints.map(j => {
    const own = s.side === null ? pose.mid : { ...pose.both, ...pose[s.side] };
    return [j.name, radians(own?.[j.motion] ?? 0)];
  })));
}

function solve(segments, muscles, crossed, joints, given) {
  const angles = anglesOf(segments, given);
  const turns = (given.pelvis ?? []).map(([x, y, z, degrees]) => [x, y, z, radians(degrees)]);
  const q = quaternion(turns);
  const pose = { angles, at: given.at, quaternion: q, pelvis: matrix(q) };
  const present = new Set(muscles.flatMap(line => line.points.flatMap((p, i) => p.present(angles) ? [`${line.name} ${i}`] : [])));
  const pushes = given.pushes.map(([name, at, force]) => {
    const s = segments.find(t => t.name === name);
    return [name, at.map((v, i) => s.factor * (i === 2 && s.side === 'left' ? -v : v)), force];
  });

  const free = run(segments, muscles, pose, present, true, pushes);
  const fixed = run(segments, muscles, pose, present, false);
  const [less, more] = [-step, step].map(by => run(segments, muscles, kneesTurned(segments, pose, by), present, true));
  const knees = segments.filter(s => s.slide);
  const slopes = Object.fromEntries(knees.map(s => [s.joints[0].name, { side: s.side, slope: s.slide(angles[s.joints[0].name]).slope }]));

  // A coordinate that also slides its joint takes the work along the slide.
  const torque = (run_, forces, name) => {
    const own = forces[run_.at[name]];
    const slide = slopes[name];
    return slide
      ? own + slide.slope[0] * forces[run_.at[`slide x ${slide.side}`]] + slide.slope[1] * forces[run_.at[`slide y ${slide.side}`]]
      : own;
  };
  const moments = joints.map(name => torque(free, free.held, name));
  agreeWithItself(segments, joints, pose, { free, fixed, less, more, moments, torque, knees });
  free.jacobian.forEach((row, m) => row.forEach((v, k) => {
    const name = Object.keys(free.at).find(n => free.at[n] === k);
    if (!crossed[m].includes(name) && !(name?.startsWith('slide'))) note('other', v, 1e-13);
  }));
  const arm = (m, name) => slopes[name]
    ? -(more.lengths[m] - less.lengths[m]) / (2 * step)
    : -free.jacobian[m][free.at[name]];
  const pelvis = free.rotations.pelvis;
  return {
    name: given.name, pelvisTurns: turns, pelvisAtM: given.at,
    anglesRad: joints.map(n => angles[n]),
    originsM: segments.map(s => free.origins[s.name]),
    originsInPelvisM: segments.map(s => fixed.origins[s.name]),
    rotations: segments.map(s => free.rotations[s.name]),
    momentsNm: moments,
    rootForceN: free.held.slice(0, 3), rootMomentNm: turn(pelvis, free.held.slice(3, 6)),
    pushes: pushes.map(([segment, atM, forceN], i) => ({ segment, atM, pointM: free.points[i], forceN })),
    pushedMomentsNm: joints.map(name => torque(free, free.pushed, name)),
    pushedRootForceN: free.pushed.slice(0, 3), pushedRootMomentNm: turn(pelvis, free.pushed.slice(3, 6)),
    lengthsM: free.lengths,
    armsM: muscles.map((_, m) => crossed[m].map(name => arm(m, name))),
  };
}

function kneesTurned(segments, pose, by) {
  const angles = { ...pose.angles };
  for (const s of segments.filter(t => t.slide)) angles[s.joints[0].name] += by;
  return { ...pose, angles };
}

/** The same pose with the pelvis fixed and gravity turned; height energy between the two pose files; frames. */
function agreeWithItself(segments, joints, pose, { free, fixed, less, more, moments, torque, knees }) {
  joints.forEach((name, k) => note('fixed', torque(fixed, fixed.held, name) - moments[k], 1e-10));
  for (const s of segments) {
    const seen = turnBack(free.rotations.pelvis, free.origins[s.name].map((v, i) => v - free.origins.pelvis[i]));
    seen.forEach((v, i) => note('frames', v - fixed.origins[s.name][i], 1e-13));
  }
  free.rotations.pelvis.forEach((v, i) => note('frames', v - pose.pelvis[i], 1e-13));
  const sum = knees.reduce((t, s) => t + moments[joints.indexOf(s.joints[0].name)], 0);
  note('energy', (more.energy - less.energy) / (2 * step) - sum, 1e-6);
}

/** One line for each list, so that a change can be read. */
function text(fixture) {
  const line = (key, value) => `"${key}":${JSON.stringify(value)}`;
  const object = (o, special = {}) => `{\n${Object.entries(o).map(([k, v]) => special[k]?.(v) ?? line(k, v)).join(',\n')}\n}`;
  return object(fixture, { poses: all => `"poses":[${all.map(p => object(p)).join(',')}]` }) + '\n';
}
