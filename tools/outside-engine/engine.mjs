// One pose as a model text for the physics engine, and what the engine makes of it.
import load from 'mujoco-js';

const gravity = 9.81;
// The engine wants mass in every moving body; this much adds 1e-11 N to the weight.
const dust = 1e-12;

export const engine = await load();
engine.FS.mkdir('/models');
engine.FS.mount(engine.MEMFS, { root: '.' }, '/models');
export const engineVersion = engine.mj_versionString();

/** Hamilton product. */
const product = (a, b) => [
  a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
  a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
  a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
  a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0],
];

/** Turns [x, y, z, radians] about axes of the room, one after the other. */
export function quaternion(turns) {
  return turns.reduce((q, [x, y, z, angle]) => {
    const s = Math.sin(angle / 2) / Math.hypot(x, y, z);
    return product([Math.cos(angle / 2), s * x, s * y, s * z], q);
  }, [1, 0, 0, 0]);
}

/** Rows of the matrix times a vector, and its transpose times a vector. */
export const turn = (m, v) => [0, 1, 2].map(i => m[3 * i] * v[0] + m[3 * i + 1] * v[1] + m[3 * i + 2] * v[2]);
export const turnBack = (m, v) => [0, 1, 2].map(i => m[i] * v[0] + m[i + 3] * v[1] + m[i + 6] * v[2]);

/**
 * The model text. A joint is written as hinges in the order of turning; the shin hangs where the knee's slide has it at
 * this angle, with two slide joints before the hinge so that the engine also tells the force along the slide.
 * @param {Set<string>} present Points of the paths to write, as `${line} ${index}`.
 */
function modelText(segments, muscles, pose, present, free) {
  const sites = Object.fromEntries(segments.map(s => [s.name, []]));
  const tendons = muscles.map(line => {
    const through = line.points.flatMap((p, i) => {
      const site = `${line.name} ${i}`;
      if (!present.has(site)) return [];
      sites[p.segment].push(`<site name="${site}" pos="${p.at(pose.angles).join(' ')}"/>`);
      return [`<site site="${site}"/>`];
    });
    return `<spatial name="${line.name}">${through.join('')}</spatial>`;
  });
  const body = s => {
    const slide = s.slide?.(pose.angles[s.joints[0].name]).at ?? [0, 0, 0];
    const joint = (name, type, axis) => `<joint name="${name}" type="${type}" axis="${axis.join(' ')}" armature="1"/>`;
    const joints = s.parent === null
      ? free ? ['<freejoint name="room"/>'] : []
      : [
          ...s.slide ? [joint(`slide x ${s.side}`, 'slide', [1, 0, 0]), joint(`slide y ${s.side}`, 'slide', [0, 1, 0])] : [],
          ...s.joints.map(j => joint(j.name, 'hinge', j.axis)),
        ];
    const inertia = s.mass > 0 ? 0.01 : dust;
    return [
      `<body name="${s.name}" pos="${s.offset.map((v, i) => v + slide[i]).join(' ')}">`, ...joints,
      `<inertial pos="${s.center.join(' ')}" mass="${s.mass || dust}" diaginertia="${inertia} ${inertia} ${inertia}"/>`,
      ...sites[s.name], ...segments.filter(c => c.parent === s.name).map(body), '</body>',
    ].join('\n');
  };
  const root = segments.find(s => s.parent === null);
  const down = free ? [0, -gravity, 0] : turnBack(pose.pelvis, [0, -gravity, 0]);
  return `<mujoco model="body">
<compiler angle="radian" inertiafromgeom="false"/>
<option gravity="${down.join(' ')}"><flag energy="enable"/></option>
<worldbody>${body(root)}</worldbody>
<tendon>${tendons.join('\n')}</tendon>
</mujoco>`;
}

/** Runs the engine on a pose and reads everything out; all arrays are plain copies. */
export function run(segments, muscles, pose, present, free, pushes = []) {
  engine.FS.writeFile('/models/body.xml', modelText(segments, muscles, pose, present, free));
  const model = engine.MjModel.loadFromXML('/models/body.xml');
  const data = new engine.MjData(model);
  try {
    const order = depthFirst(segments);
    const names = order.flatMap(s => [...s.slide ? [`slide x ${s.side}`, `slide y ${s.side}`] : [], ...s.joints.map(j => j.name)]);
    if (model.nv !== names.length + (free ? 6 : 0) || model.nbody !== order.length + 1) throw new Error('The engine lost a joint or a body.');
    data.qpos.set([...free ? [...pose.at, ...pose.quaternion] : [], ...names.map(name => pose.angles[name] ?? 0)]);
    data.qvel.set(new Array(model.nv).fill(0));
    engine.mj_forward(model, data);
    data.qacc.set(new Array(model.nv).fill(0));
    engine.mj_inverse(model, data);
    const at = Object.fromEntries(names.map((name, i) => [name, i + (free ? 6 : 0)]));
    const bodies = Object.fromEntries(order.map((s, i) => [s.name, i + 1]));
    const origins = bodyVectors(order, data.xpos, 3);
    const rotations = bodyVectors(order, data.xmat, 9);
    const held = Array.from(data.qfrc_inverse);
    const pushed = [...held];
    const points = pushes.map(([segment, local, force]) => {
      const point = turn(rotations[segment], local).map((v, i) => v + origins[segment][i]);
      const buffer = new engine.DoubleBuffer(model.nv);
      engine.mj_applyFT(model, data, force, [0, 0, 0], point, bodies[segment], buffer);
      Array.from(buffer.GetView()).forEach((q, i) => { pushed[i] -= q; });
      buffer.delete();
      return point;
    });
    return {
      at, origins, rotations, held, pushed, points, energy: data.energy[0],
      lengths: Array.from(data.ten_length), jacobian: jacobian(model, data, muscles.length),
    };
  } finally {
    data.delete();
    model.delete();
  }
}

function depthFirst(segments) {
  const below = s => [s, ...segments.filter(c => c.parent === s.name).flatMap(below)];
  return below(segments.find(s => s.parent === null));
}

/** Body 0 is the room. */
function bodyVectors(order, flat, size) {
  const values = Array.from(flat);
  return Object.fromEntries(order.map((s, i) => [s.name, values.slice(size * (i + 1), size * (i + 2))]));
}

/** Rows of dL/dq, whether the engine keeps them dense or sparse. */
function jacobian(model, data, count) {
  const values = Array.from(data.ten_J);
  const rows = Array.from({ length: count }, () => new Array(model.nv).fill(0));
  const sparse = engine.mj_isSparse(model);
  for (let t = 0; t < count; t++) {
    if (!sparse) {
      for (let k = 0; k < model.nv; k++) rows[t][k] = values[t * model.nv + k];
      continue;
    }
    const first = data.ten_J_rowadr[t];
    for (let e = first; e < first + data.ten_J_rownnz[t]; e++) rows[t][data.ten_J_colind[e]] = values[e];
  }
  return rows;
}
