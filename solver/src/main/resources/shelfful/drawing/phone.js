"use strict";
(function () {
  var root = document.documentElement;
  var key = "shelfful " + document.body.getAttribute("data-plan");
  var pages = Array.from(document.querySelectorAll("[data-page]"));
  var boxes = Array.from(document.querySelectorAll("input[type=checkbox]"));
  var outs = Array.from(document.querySelectorAll("li[data-out]"));
  var state = { done: [], page: 0, look: "", out: {}, rest: "" };

  function byId(id) {
    return document.getElementById(id);
  }

  function read() {
    try {
      var kept = JSON.parse(localStorage.getItem(key));
      if (kept) {
        if (Array.isArray(kept.done)) {
          state.done = kept.done.filter(function (id) {
            return typeof id === "string" ? boxes.some(function (box) { return box.id === id; }) : false;
          });
        }
        state.page = pages[kept.page] ? kept.page : 0;
        outs.forEach(function (row) {
          var was = kept.out ? kept.out[row.getAttribute("data-out")] : null;
          if (Array.isArray(was)) {
            state.out[row.getAttribute("data-out")] = [String(was[0]), String(was[1])];
          }
        });
        state.rest = kept.rest === "good" ? "good" : "";
        state.look = kept.look === "dark" ? "dark" : kept.look === "light" ? "light" : "";
      }
    } catch (nothingKept) {
      byId("kept").hidden = false;
    }
  }

  function keep() {
    try {
      localStorage.setItem(key, JSON.stringify(state));
    } catch (notKept) {
      byId("kept").hidden = false;
    }
  }

  function isDone(box) {
    return state.done.indexOf(box.id) > -1;
  }

  function waiting(page) {
    return Array.from(page.querySelectorAll("input[type=checkbox]")).filter(function (box) {
      return !isDone(box);
    });
  }

  // The pages whose pieces are set together, in the order of their numbers.
  function together(page) {
    var group = page.getAttribute("data-with");
    return group ? pages.filter(function (one) { return one.getAttribute("data-with") === group; }) : [page];
  }

  // The shelves come before what stands on them.
  function turnOf(box) {
    return box.hasAttribute("data-piece") ? Number(box.closest("li").querySelector(".number").textContent) : 0;
  }

  function nextOf(page) {
    var left = together(page).reduce(function (all, one) { return all.concat(waiting(one)); }, []);
    return left.sort(function (a, b) { return turnOf(a) - turnOf(b); })[0];
  }

  function pageOf(box) {
    return pages.indexOf(box.closest("[data-page]"));
  }

  function pageAfter(page) {
    var group = together(page);
    return pages.indexOf(group[group.length - 1]) + 1;
  }

  function pieces(list) {
    return list.filter(function (box) { return box.hasAttribute("data-piece"); }).length;
  }

  function look() {
    root.classList.remove("dark", "light");
    if (state.look) {
      root.classList.add(state.look);
    }
  }

  function isDark() {
    if (state.look) {
      return state.look === "dark";
    }
    return window.matchMedia("(prefers-color-scheme: dark)").matches;
  }

  function show() {
    var page = pages[state.page];
    pages.forEach(function (one) { one.hidden = one !== page; });
    var next = nextOf(page);
    var isHere = next ? pageOf(next) === state.page : false;
    var onward = next ? pages[pageOf(next)] : pages[pageAfter(page)];
    boxes.forEach(function (box) {
      box.checked = isDone(box);
      [box.closest("li"), byId("at-" + box.id)].forEach(function (mark) {
        if (mark) {
          mark.classList.toggle("done", isDone(box));
          mark.classList.toggle("next", box === next);
        }
      });
    });
    var left = pieces(boxes.filter(function (box) { return !isDone(box); }));
    var here = pieces(waiting(page));
    byId("page").textContent = page.getAttribute("data-page");
    byId("left").textContent = (here > 0 ? here + " left here, " : "") + left + " left of " + pieces(boxes);
    var row = next ? next.closest("li") : null;
    byId("do").textContent = isHere ? "Set " + row.getAttribute("data-short")
        : onward ? "On to " + onward.getAttribute("data-page") : "The end";
    byId("how").textContent = isHere ? row.getAttribute("data-where")
        : row ? "for " + row.getAttribute("data-short") : "";
    byId("undo").disabled = state.done.length === 0;
    byId("before").disabled = state.page === 0;
    byId("after").disabled = !pages[state.page + 1];
    byId("look").textContent = isDark() ? "Light" : "Dark";
    return row;
  }

  function changed(isSet) {
    keep();
    var row = show();
    if (row) {
      if (isSet) {
        row.scrollIntoView({ block: "nearest" });
      }
    }
  }

  function tick(box, on) {
    state.done = state.done.filter(function (id) { return id !== box.id; });
    if (on) {
      state.done.push(box.id);
    }
    changed(false);
  }

  function open(page) {
    if (pages[page]) {
      state.page = page;
      keep();
      show();
      window.scrollTo(0, 0);
    }
  }

  function turn(by) {
    open(state.page + by);
  }

  function forward() {
    var page = pages[state.page];
    var next = nextOf(page);
    if (next ? pageOf(next) === state.page : false) {
      tick(next, true);
      next = nextOf(page);
      if (next ? pageOf(next) !== state.page : false) {
        open(pageOf(next));
      }
    } else {
      open(next ? pageOf(next) : pageAfter(page));
    }
  }

  function undo() {
    var last = state.done.pop();
    if (last) {
      state.page = pages.indexOf(byId(last).closest("[data-page]"));
      changed(true);
    }
  }

  // CRC-32 of the text in UTF-8, as the program checks it.
  function sum(text) {
    var crc = -1;
    Array.from(unescape(encodeURIComponent(text))).forEach(function (letter) {
      crc = crc ^ letter.charCodeAt(0);
      [1, 2, 3, 4, 5, 6, 7, 8].forEach(function () {
        crc = (crc >>> 1) ^ ((crc >>> 0) % 2 === 1 ? 0xedb88320 : 0);
      });
    });
    return ("0000000" + ((crc ^ -1) >>> 0).toString(16)).slice(-8);
  }

  function note() {
    var lines = ["shelfful unpacking 1", "plan " + document.body.getAttribute("data-mark")];
    outs.forEach(function (row) {
      var id = row.getAttribute("data-out");
      var mark = state.out[id] || ["", ""];
      var cause = mark[0] === "good" ? "" : mark[1].replace(/[|\s]+/g, " ").trim().slice(0, 60);
      if (mark[0]) {
        lines.push([id, mark[0]].concat(cause ? [cause] : []).join(" | "));
      }
    });
    if (state.rest) {
      lines.push("rest good");
    }
    var body = lines.join("\n") + "\n";
    return body + "sum " + sum(body) + "\n";
  }

  function showMarks() {
    outs.forEach(function (row) {
      var mark = state.out[row.getAttribute("data-out")] || ["", ""];
      row.classList.toggle("flawed", mark[0] === "second" || mark[0] === "lost");
    });
    byId("note").value = note();
    byId("save").href = "data:text/plain;charset=utf-8," + encodeURIComponent(note());
  }

  function led(row) {
    var id = row.getAttribute("data-out");
    var grade = row.querySelector("select");
    var cause = row.querySelector("input");
    var mark = state.out[id] || ["", ""];
    grade.value = ["good", "second", "lost"].indexOf(mark[0]) > -1 ? mark[0] : "";
    cause.value = mark[1];
    function changed() {
      if (cause.value ? !grade.value : false) {
        grade.value = "second";
      }
      state.out[id] = [grade.value, cause.value];
      keep();
      showMarks();
    }
    grade.addEventListener("change", changed);
    cause.addEventListener("change", changed);
  }

  read();
  look();
  outs.forEach(led);
  byId("rest").value = state.rest;
  byId("rest").addEventListener("change", function () {
    state.rest = byId("rest").value;
    keep();
    showMarks();
  });
  byId("copy").addEventListener("click", function () {
    byId("note").select();
    document.execCommand("copy");
  });
  showMarks();
  root.classList.add("led");
  byId("top").hidden = false;
  byId("bar").hidden = false;
  boxes.forEach(function (box) {
    box.addEventListener("change", function () { tick(box, box.checked); });
    var spot = byId("at-" + box.id);
    if (spot) {
      spot.addEventListener("click", function () { tick(box, !isDone(box)); });
    }
  });
  byId("forward").addEventListener("click", forward);
  byId("undo").addEventListener("click", undo);
  byId("before").addEventListener("click", function () { turn(-1); });
  byId("after").addEventListener("click", function () { turn(1); });
  byId("look").addEventListener("click", function () {
    state.look = isDark() ? "light" : "dark";
    look();
    changed(false);
  });
  document.addEventListener("keydown", function (event) {
    var typing = event.target.type === "text" ? true : ["SELECT", "TEXTAREA"].indexOf(event.target.tagName) > -1;
    if (typing) {
      return;
    }
    var busy = ["INPUT", "BUTTON"].indexOf(event.target.tagName) > -1;
    var act = { " ": busy ? null : forward, Backspace: undo, ArrowLeft: function () { turn(-1); }, ArrowRight: function () { turn(1); } }[event.key];
    if (act) {
      event.preventDefault();
      act();
    }
  });
  show();
})();
