// Shows bodies that the server made, to be turned about: drag, wheel, or arrow keys and + and -.
const vertex = `attribute vec3 at; attribute vec3 out_; uniform mat4 turn; uniform mat4 view; varying float shade;
void main() { vec3 n = (turn * vec4(out_, 0.)).xyz; shade = .35 + .65 * max(0., dot(normalize(n), normalize(vec3(.3, .5, .8))));
gl_Position = view * turn * vec4(at, 1.); }`;
const fragment = `precision mediump float; uniform vec3 colour; varying float shade; void main() { gl_FragColor = vec4(colour * shade, 1.); }`;
const colours = [[.78, .74, .66], [.62, .42, .25], [.55, .5, .42], [.45, .4, .36]];

function read(buffer) {
  const data = new DataView(buffer), count = data.getUint32(80, true);
  const all = new Float32Array(count * 18);
  for (let i = 0, at = 84; i < count; i++, at += 50) {
    for (let corner = 0; corner < 3; corner++) {
      for (let k = 0; k < 3; k++) {
        all[i * 18 + corner * 6 + k] = data.getFloat32(at + 12 + corner * 12 + k * 4, true);
        all[i * 18 + corner * 6 + 3 + k] = data.getFloat32(at + k * 4, true);
      }
    }
  }
  return all;
}

export async function mount(canvas, base) {
  const gl = canvas.getContext("webgl", {antialias: true, preserveDrawingBuffer: true});
  if (!gl) { canvas.replaceWith("This browser draws no bodies."); return; }
  const program = gl.createProgram();
  for (const [type, source] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
    const shader = gl.createShader(type);
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  gl.useProgram(program);
  const parts = [];
  let reach = 1;
  for (let i = 0; i < 60; i++) {
    const answer = await fetch(base + "solid?part=" + i);
    if (answer.status !== 200) break;
    const points = read(await answer.arrayBuffer()), buffer = gl.createBuffer();
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    gl.bufferData(gl.ARRAY_BUFFER, points, gl.STATIC_DRAW);
    for (let k = 0; k < points.length; k += 6) reach = Math.max(reach, Math.hypot(points[k], points[k + 1], points[k + 2]));
    parts.push({buffer, count: points.length / 6});
  }
  let across = -.5, up = -.6, near = 1, held = null;
  const where = (name) => gl.getUniformLocation(program, name);
  function draw() {
    const ratio = window.devicePixelRatio || 1;
    canvas.width = canvas.clientWidth * ratio;
    canvas.height = canvas.clientHeight * ratio;
    gl.viewport(0, 0, canvas.width, canvas.height);
    gl.clearColor(0, 0, 0, 0);
    gl.enable(gl.DEPTH_TEST);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    const [ca, sa, cu, su] = [Math.cos(across), Math.sin(across), Math.cos(up), Math.sin(up)];
    gl.uniformMatrix4fv(where("turn"), false, [ca, sa * su, -sa * cu, 0, 0, cu, su, 0, sa, -ca * su, ca * cu, 0, 0, 0, 0, 1]);
    const scale = .92 * near / reach, wide = canvas.width / canvas.height;
    gl.uniformMatrix4fv(where("view"), false, [scale / Math.max(1, wide), 0, 0, 0, 0, scale * Math.min(1, wide), 0, 0, 0, 0, -.5 / reach, 0, 0, 0, 0, 1]);
    const at = gl.getAttribLocation(program, "at"), out = gl.getAttribLocation(program, "out_");
    parts.forEach((part, i) => {
      gl.bindBuffer(gl.ARRAY_BUFFER, part.buffer);
      gl.enableVertexAttribArray(at);
      gl.enableVertexAttribArray(out);
      gl.vertexAttribPointer(at, 3, gl.FLOAT, false, 24, 0);
      gl.vertexAttribPointer(out, 3, gl.FLOAT, false, 24, 12);
      gl.uniform3fv(where("colour"), colours[Math.min(i, 1)]);
      gl.drawArrays(gl.TRIANGLES, 0, part.count);
    });
    canvas.dataset.drawn = parts.length;
  }
  canvas.addEventListener("pointerdown", (event) => { held = [event.clientX, event.clientY]; canvas.setPointerCapture(event.pointerId); });
  canvas.addEventListener("pointermove", (event) => {
    if (!held) return;
    across += (event.clientX - held[0]) / 120;
    up += (event.clientY - held[1]) / 120;
    held = [event.clientX, event.clientY];
    draw();
  });
  canvas.addEventListener("pointerup", () => { held = null; });
  canvas.addEventListener("keydown", (event) => {
    const way = {ArrowLeft: [-.15, 0], ArrowRight: [.15, 0], ArrowUp: [0, -.15], ArrowDown: [0, .15]}[event.key];
    if (way) { across += way[0]; up += way[1]; }
    else if (event.key === "+") near *= 1.15;
    else if (event.key === "-") near /= 1.15;
    else return;
    event.preventDefault();
    draw();
  });
  new ResizeObserver(draw).observe(canvas);
  draw();
}
