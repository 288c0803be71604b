"use strict";
(function () {
  var root = document.documentElement;
  var key = "shelfful " + document.body.getAttribute("data-plan");
  var pages = Array.from(document.querySelectorAll("[data-page]"));
  var boxes = Array.from(document.querySelectorAll("input[type=checkbox]"));
  var state = { done: [], page: 0, look: "" };

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
    var next = waiting(page)[0];
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
    byId("do").textContent = next ? "Set " + row.getAttribute("data-short")
        : pages[state.page + 1] ? "On to " + pages[state.page + 1].getAttribute("data-page") : "The end";
    byId("how").textContent = row ? row.getAttribute("data-where") : "";
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

  function turn(by) {
    if (pages[state.page + by]) {
      state.page += by;
      keep();
      show();
      window.scrollTo(0, 0);
    }
  }

  function forward() {
    var next = waiting(pages[state.page])[0];
    if (next) {
      tick(next, true);
    } else {
      turn(1);
    }
  }

  function undo() {
    var last = state.done.pop();
    if (last) {
      state.page = pages.indexOf(byId(last).closest("[data-page]"));
      changed(true);
    }
  }

  read();
  look();
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
    var busy = ["INPUT", "BUTTON"].indexOf(event.target.tagName) > -1;
    var act = { " ": busy ? null : forward, Backspace: undo, ArrowLeft: function () { turn(-1); }, ArrowRight: function () { turn(1); } }[event.key];
    if (act) {
      event.preventDefault();
      act();
    }
  });
  show();
})();
