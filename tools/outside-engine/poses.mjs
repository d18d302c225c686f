// Poses of the whole body. Degrees in the sign of the model: hip flexion, adduction, internal rotation, knee EXTENSION,
// dorsiflexion, inversion, trunk and neck extension positive. `both` sets both sides, `right` and `left` one.
// `pelvis` turns the upright pelvis, one turn after the other about axes of the room: [x, y, z, degrees].
// `pushes` are forces besides gravity: segment, point in its frame (published size, right side), force in the room (N).
// None of the poses stands exactly where a path gains or loses a point.
const supine = [[0, 0, 1, 90]];
const prone = [[0, 0, 1, -90]];
const onLeft = [[1, 0, 0, -90]];
const onRight = [[1, 0, 0, 90]];
const sole = [0.05, -0.016, 0.01];
const palm = [0.01, -0.06, 0.02];
const shin = [0.02, -0.05, 0.005];

export const poses = [
  { name: 'standing', at: [0, 0.93, 0], pushes: [['foot right', sole, [0, 310, 0]], ['foot left', sole, [0, 290, 0]]] },
  {
    name: 'squat', at: [-0.1, 0.55, 0.02], pelvis: [[0, 0, 1, -24]],
    both: { hipFlexion: 82, hipAdduction: -9, hipRotation: -6, kneeExtension: -97, ankleDorsiflexion: 19, subtalarInversion: 3,
      shoulderFlexion: 88, shoulderAdduction: -5, elbowFlexion: 12, forearmPronation: 40 },
    mid: { trunkExtension: -11, neckExtension: 17 },
    pushes: [['foot right', sole, [25, 330, -18]], ['foot left', sole, [25, 300, 18]], ['hand right', palm, [0, -40, 0]]],
  },
  {
    name: 'deep squat', at: [-0.2, 0.3, 0], pelvis: [[0, 0, 1, -33]],
    both: { hipFlexion: 117, hipAdduction: -22, hipRotation: -14, kneeExtension: -128, ankleDorsiflexion: 27, toeExtension: 11,
      shoulderFlexion: 61, elbowFlexion: 95, forearmPronation: 20 },
    mid: { trunkExtension: -31, neckExtension: 26 },
    pushes: [['toes right', [0.03, -0.01, 0], [-20, 260, 11]], ['foot left', sole, [12, 340, -9]]],
  },
  {
    name: 'single-leg stance', at: [0.02, 0.94, -0.08], pelvis: [[1, 0, 0, -4]],
    right: { hipAdduction: 4, hipFlexion: 3, kneeExtension: -5, ankleDorsiflexion: 2, subtalarInversion: -3 },
    left: { hipFlexion: 61, hipAdduction: -7, kneeExtension: -83, ankleDorsiflexion: -12, shoulderFlexion: 35 },
    both: { elbowFlexion: 24 },
    mid: { trunkBending: 5, trunkRotation: -6 },
    pushes: [['foot right', sole, [0, 615, 0]]],
  },
  {
    name: 'single-leg squat', at: [0, 0.7, 0.05], pelvis: [[0, 1, 0, 12], [1, 0, 0, 7], [0, 0, 1, -15]],
    left: { hipFlexion: 64, hipAdduction: 13, hipRotation: 9, kneeExtension: -71, ankleDorsiflexion: 24, subtalarInversion: -8 },
    right: { hipFlexion: 22, hipAdduction: -4, kneeExtension: -52, ankleDorsiflexion: 6 },
    both: { shoulderFlexion: 74, elbowFlexion: 8 },
    mid: { trunkExtension: -14, trunkBending: -9, neckExtension: 9 },
    pushes: [['foot left', sole, [-15, 640, 22]]],
  },
  {
    name: 'lunge', at: [0.1, 0.62, 0], pelvis: [[0, 1, 0, 20]],
    right: { hipFlexion: 84, hipAdduction: 2, hipRotation: 5, kneeExtension: -88, ankleDorsiflexion: 9 },
    left: { hipFlexion: -17, hipAdduction: -3, kneeExtension: -74, ankleDorsiflexion: 14, toeExtension: 43 },
    both: { shoulderAdduction: -25, shoulderRotation: -20, elbowFlexion: 85, forearmPronation: 55 },
    mid: { trunkRotation: 12 },
    pushes: [['foot right', sole, [-60, 420, 14]], ['toes left', [0.03, -0.01, 0], [55, 190, -12]]],
  },
  {
    name: 'kneeling', at: [0, 0.49, 0],
    both: { hipFlexion: -4, hipAdduction: -6, hipRotation: 3, kneeExtension: -94, ankleDorsiflexion: -47, toeExtension: -20 },
    left: { shoulderFlexion: 150, shoulderAdduction: -20, elbowFlexion: 30 },
    mid: { trunkBending: 11, neckRotation: 28 },
    pushes: [['shank right', shin, [10, 320, 0]], ['shank left', shin, [-10, 280, 5]]],
  },
  {
    name: 'heel sitting', at: [-0.05, 0.22, 0], pelvis: [[0, 0, 1, 6]],
    both: { hipFlexion: 66, kneeExtension: -139, ankleDorsiflexion: -49, hipRotation: 8, shoulderFlexion: 25, elbowFlexion: 60 },
    mid: { trunkExtension: -8 },
    pushes: [['pelvis', [-0.08, -0.12, 0.04], [0, 350, 0]], ['shank left', shin, [0, 130, 0]]],
  },
  {
    name: 'hands and knees', at: [0.3, 0.48, 0.1], pelvis: [[0, 0, 1, -86]],
    both: { hipFlexion: 87, hipAdduction: -3, kneeExtension: -86, ankleDorsiflexion: -44, shoulderFlexion: 82, shoulderRotation: 8,
      elbowFlexion: 3, forearmPronation: 70, wristFlexion: -73, wristDeviation: 6 },
    mid: { trunkExtension: -4, neckExtension: 13 },
    right: { shoulderFlexion: 168, wristFlexion: 0 },
    left: { hipFlexion: -3, kneeExtension: -2 },
    pushes: [['hand left', palm, [5, 250, -8]], ['shank right', shin, [-5, 340, 8]]],
  },
  {
    name: 'supine, one leg raised', at: [0, 0.1, 0], pelvis: supine,
    right: { hipFlexion: 77, hipAdduction: 3, kneeExtension: -7, ankleDorsiflexion: 8 },
    left: { hipFlexion: 2, hipRotation: -11, ankleDorsiflexion: -28 },
    both: { shoulderAdduction: -31, elbowFlexion: 5, forearmPronation: 12 },
    pushes: [['torso', [-0.1, 0.25, 0], [0, 330, 0]], ['shank right', [0.02, -0.38, 0], [-80, 30, 6]]],
  },
  {
    name: 'bridge', at: [0, 0.28, 0], pelvis: [[0, 0, 1, 68]],
    both: { hipFlexion: 11, hipAdduction: -5, kneeExtension: -96, ankleDorsiflexion: -6, shoulderFlexion: -21, elbowFlexion: 4 },
    left: { hipFlexion: 9, kneeExtension: -26 },
    mid: { neckExtension: -33, trunkExtension: 3 },
    pushes: [['foot right', sole, [40, 300, 0]], ['torso', [-0.1, 0.3, 0.03], [-40, 340, 0]]],
  },
  {
    name: 'prone, knee bent', at: [0, 0.11, 0], pelvis: prone,
    right: { hipFlexion: -13, kneeExtension: -118, ankleDorsiflexion: 15, hipRotation: 27 },
    left: { hipFlexion: 1, hipAdduction: -2, kneeExtension: -3, ankleDorsiflexion: -36 },
    both: { shoulderAdduction: -110, shoulderRotation: -62, elbowFlexion: 92 },
    mid: { trunkExtension: 14, neckRotation: -66 },
    pushes: [['pelvis', [0.03, 0.02, 0.06], [0, 410, 0]], ['shank right', [0, -0.36, 0.02], [90, 10, -12]]],
  },
  {
    name: 'side-lying on the left, leg raised', at: [0, 0.16, 0], pelvis: onLeft,
    right: { hipFlexion: -5, hipAdduction: -29, hipRotation: -4, kneeExtension: -1.5, ankleDorsiflexion: 5, shoulderFlexion: 20 },
    left: { hipFlexion: 43, kneeExtension: -57, ankleDorsiflexion: 3, shoulderFlexion: 95, elbowFlexion: 110, forearmPronation: 33 },
    mid: { trunkBending: -6, neckBending: -17 },
    pushes: [['pelvis', [0, 0.02, -0.12], [0, 380, 0]], ['shank right', [0, -0.33, 0.03], [0, -70, 0]]],
  },
  {
    name: 'side-lying on the right, clam', at: [0.2, 0.17, -0.3], pelvis: [...onRight, [0, 1, 0, 140]],
    right: { hipFlexion: 47, kneeExtension: -92, ankleDorsiflexion: 2, shoulderFlexion: 80, elbowFlexion: 71 },
    left: { hipFlexion: 48, hipAdduction: -21, hipRotation: -24, kneeExtension: -91, subtalarInversion: 12, shoulderFlexion: 33, wristDeviation: -9 },
    mid: { trunkRotation: 4, neckBending: 12 },
    pushes: [['thigh left', [0, -0.3, 0.04], [14, -55, 30]]],
  },
  {
    name: 'sitting', at: [0, 0.52, 0], pelvis: [[0, 0, 1, 8], [0, 1, 0, -75]],
    both: { hipFlexion: 79, hipAdduction: -8, kneeExtension: -79, ankleDorsiflexion: -1, shoulderFlexion: 14, elbowFlexion: 73, wristFlexion: 17 },
    right: { kneeExtension: -14, ankleDorsiflexion: 11 },
    mid: { trunkExtension: -13, trunkRotation: 16, neckExtension: 8 },
    pushes: [['pelvis', [-0.06, -0.12, 0], [0, 470, 0]], ['shank right', [0.03, -0.37, 0], [30, -95, 44]]],
  },
  {
    name: 'twisted, every joint turned', at: [-1.3, 0.8, 2.1], pelvis: [[0.6, 0, 0.8, 37], [0, 1, 0, -112], [0.36, 0.48, 0.8, 71]],
    right: { hipFlexion: 41, hipAdduction: -17, hipRotation: 23, kneeExtension: -66, ankleDorsiflexion: 13, subtalarInversion: 18, toeExtension: 21,
      shoulderFlexion: 57, shoulderAdduction: -48, shoulderRotation: 31, elbowFlexion: 83, forearmPronation: 61, wristFlexion: 24, wristDeviation: -11 },
    left: { hipFlexion: -12, hipAdduction: 19, hipRotation: -33, kneeExtension: -28, ankleDorsiflexion: -31, subtalarInversion: -9, toeExtension: -17,
      shoulderFlexion: -36, shoulderAdduction: 15, shoulderRotation: -44, elbowFlexion: 37, forearmPronation: 19, wristFlexion: -41, wristDeviation: 22 },
    mid: { trunkExtension: -23, trunkBending: 14, trunkRotation: -19, neckExtension: 31, neckBending: -22, neckRotation: 47 },
    pushes: [['hand right', palm, [70, -110, 45]], ['toes left', [0.02, 0, 0.01], [-130, 260, 88]], ['head', [0.05, 0.1, 0.02], [-33, 21, 52]],
      ['radius left', [0.01, -0.1, 0], [12, 34, -56]], ['talus right', [0.01, 0.01, 0.01], [-210, 95, 17]]],
  },
];
