"use strict";
// What scrolls sideways in its box can be reached by Tab, to scroll it by keys; what fits is no stop on the way.
(() => {
  const boxes = document.querySelectorAll(".drawing, .wide, pre");
  const reach = () => boxes.forEach((b) => {
    if (b.scrollWidth > b.clientWidth) b.tabIndex = 0;
    else b.removeAttribute("tabindex");
  });
  addEventListener("resize", reach);
  reach();
})();
// Turns buck and sheet: WebGL 2, flat light, nothing fetched. Without it the still picture above stays alone.
(() => {
  const canvas = document.getElementById("view"), data = document.getElementById("models");
  const gl = canvas && data && canvas.getContext("webgl2", { antialias: true, preserveDrawingBuffer: true });
  if (!gl) return;
  const bytes = (text) => Uint8Array.from(atob(text), (c) => c.charCodeAt(0)).buffer;
  const models = JSON.parse(data.textContent).map((m) => ({
    points: new Float32Array(bytes(m.points)), triangles: new Uint32Array(bytes(m.triangles)), colours: new Uint8Array(bytes(m.colours)),
  }));
  const shader = (kind, source) => {
    const made = gl.createShader(kind);
    gl.shaderSource(made, source);
    gl.compileShader(made);
    return made;
  };
  const program = gl.createProgram();
  gl.attachShader(program, shader(gl.VERTEX_SHADER, `#version 300 es
    in vec3 place; in vec4 tint; uniform mat4 turn; uniform mat4 lens; uniform vec2 span; out vec3 seen; out float high; out vec4 own;
    void main() { own = tint; vec4 p = turn * vec4(place, 1.0); seen = p.xyz; high = (place.z - span.x) / span.y; gl_Position = lens * p; }`));
  gl.attachShader(program, shader(gl.FRAGMENT_SHADER, `#version 300 es
    precision highp float; in vec3 seen; in float high; in vec4 own; out vec4 colour;
    void main() {
      vec3 n = normalize(cross(dFdx(seen), dFdy(seen)));
      float light = 0.45 + 0.45 * max(0.0, dot(n, normalize(vec3(0.3, 0.6, 0.75)))) + 0.12 * max(0.0, dot(n, normalize(vec3(-0.8, -0.2, 0.5))));
      vec3 wood = mix(vec3(0.74, 0.70, 0.63), vec3(0.97, 0.90, 0.76), clamp(high, 0.0, 1.0));
      colour = vec4(mix(wood, own.rgb, own.a) * mix(light, 0.4 + 0.6 * light, own.a), 1.0);
    }`));
  gl.linkProgram(program);
  if (!gl.getProgramParameter(program, gl.LINK_STATUS)) return;
  gl.useProgram(program);
  const give = (target, numbers) => {
    gl.bindBuffer(target, gl.createBuffer());
    gl.bufferData(target, numbers, gl.STATIC_DRAW);
  };
  const place = gl.getAttribLocation(program, "place"), tint = gl.getAttribLocation(program, "tint");
  for (const m of models) {
    gl.bindVertexArray(m.array = gl.createVertexArray());
    give(gl.ARRAY_BUFFER, m.points);
    gl.enableVertexAttribArray(place);
    gl.vertexAttribPointer(place, 3, gl.FLOAT, false, 0, 0);
    give(gl.ELEMENT_ARRAY_BUFFER, m.triangles);
    if (m.colours.length === 0) continue;
    give(gl.ARRAY_BUFFER, m.colours);
    gl.enableVertexAttribArray(tint);
    gl.vertexAttribPointer(tint, 4, gl.UNSIGNED_BYTE, true, 0, 0);
  }
  // Where a model has no colours of its own it is of wood.
  gl.vertexAttrib4f(tint, 0, 0, 0, 0);
  gl.enable(gl.DEPTH_TEST);

  // A box round each, so that a small buck under a large sheet fills the picture too.
  for (const m of models) {
    m.low = [Infinity, Infinity, Infinity];
    m.high = [-Infinity, -Infinity, -Infinity];
    for (let i = 0; i < m.points.length; i++) {
      m.low[i % 3] = Math.min(m.low[i % 3], m.points[i]);
      m.high[i % 3] = Math.max(m.high[i % 3], m.points[i]);
    }
  }
  const [lowest, highest] = [Math.min(...models.map((m) => m.low[2])), Math.max(...models.map((m) => m.high[2]))];
  gl.uniform2f(gl.getUniformLocation(program, "span"), lowest, Math.max(1e-6, highest - lowest));
  let around = 0.5, above = 0.85, away = 0, shown = models[0];

  const draw = () => {
    const width = Math.round(canvas.clientWidth * devicePixelRatio), height = Math.round(canvas.clientHeight * devicePixelRatio);
    if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
    gl.viewport(0, 0, width, height);
    gl.clearColor(0.965, 0.953, 0.925, 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    const [s, c, t, d] = [Math.sin(around), Math.cos(around), Math.sin(above), Math.cos(above)];
    const { low, high } = shown, k = 2 / Math.hypot(...high.map((h, i) => h - low[i]));
    const [x, y, z] = low.map((l, i) => (l + high[i]) / 2);
    // Turned about the upright axis, tipped toward the eye, moved away.
    const rows = [[c * k, -s * k, 0], [s * t * k, c * t * k, d * k], [-s * d * k, -c * d * k, t * k]];
    const shift = rows.map((r) => -(r[0] * x + r[1] * y + r[2] * z));
    const f = 1.9, near = 0.1, far = 20, aspect = width / height, wide = aspect < 1 ? aspect : 1;
    // At first as near as all corners of its box stay in the picture, with a little air.
    if (away === 0)
      for (let i = 0; i < 8; i++) {
        const corner = [i & 1 ? high[0] : low[0], i & 2 ? high[1] : low[1], i & 4 ? high[2] : low[2]];
        const [right, up, near] = rows.map((r, j) => r[0] * corner[0] + r[1] * corner[1] + r[2] * corner[2] + shift[j]);
        away = Math.max(away, 1.2, near + Math.max(Math.abs(right) * f * wide / aspect, Math.abs(up) * f * wide) / 0.92);
      }
    gl.uniformMatrix4fv(gl.getUniformLocation(program, "turn"), false, [
      rows[0][0], rows[1][0], rows[2][0], 0, rows[0][1], rows[1][1], rows[2][1], 0, rows[0][2], rows[1][2], rows[2][2], 0, shift[0], shift[1], shift[2] - away, 1]);
    gl.uniformMatrix4fv(gl.getUniformLocation(program, "lens"), false, [
      f * wide / aspect, 0, 0, 0, 0, f * wide, 0, 0, 0, 0, (far + near) / (near - far), -1, 0, 0, 2 * far * near / (near - far), 0]);
    gl.bindVertexArray(shown.array);
    gl.drawElements(gl.TRIANGLES, shown.triangles.length, gl.UNSIGNED_INT, 0);
  };
  const turnBy = (right, up) => {
    around += right;
    above = Math.max(-1.5, Math.min(1.5, above + up));
    draw();
  };
  const zoomBy = (factor) => {
    away = Math.max(1.2, Math.min(8, away * factor));
    draw();
  };
  const buttons = document.querySelectorAll("#view-choice button");
  const show = (number) => {
    shown = models[number];
    away = 0;
    buttons.forEach((b, i) => b.setAttribute("aria-pressed", String(i === number)));
    draw();
  };
  buttons.forEach((b, i) => b.addEventListener("click", () => show(i)));
  canvas.addEventListener("pointerdown", (e) => canvas.setPointerCapture(e.pointerId));
  canvas.addEventListener("pointermove", (e) => { if (e.buttons) turnBy(e.movementX / 120, e.movementY / 120); });
  canvas.addEventListener("wheel", (e) => { e.preventDefault(); zoomBy(Math.exp(e.deltaY / 600)); }, { passive: false });
  canvas.addEventListener("keydown", (e) => {
    const step = { ArrowLeft: [-0.15, 0], ArrowRight: [0.15, 0], ArrowUp: [0, 0.15], ArrowDown: [0, -0.15] }[e.key];
    if (step) turnBy(...step);
    else if (e.key === "+" || e.key === "-") zoomBy(e.key === "+" ? 0.9 : 1.1);
    else return;
    e.preventDefault();
  });
  addEventListener("resize", draw);
  canvas.hidden = false;
  document.getElementById("view-help").hidden = false;
  document.getElementById("view-choice").hidden = models.length < 2;
  show(0);
})();
