<#-- Searching by typing: the one script there is, on the list alone. Without it the list is whole. -->
"use strict";
(function () {
  var field = document.getElementById("search"), found = document.getElementById("found");
  var rows = Array.prototype.slice.call(document.querySelectorAll(".row"));
  var sections = Array.prototype.slice.call(document.querySelectorAll("main section"));
  function plain(text) {
    return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
  }
  var texts = rows.map(function (row) {
    var section = row.closest("section").querySelector("h2, h3");
    return plain(row.textContent + " " + section.textContent);
  });
  function search() {
    var words = plain(field.value).split(/\s+/).filter(Boolean), shown = 0;
    rows.forEach(function (row, i) {
      row.hidden = !words.every(function (word) { return texts[i].indexOf(word) >= 0; });
      if (!row.hidden) { shown++; }
    });
    sections.forEach(function (section) {
      section.hidden = words.length > 0 && !section.querySelector(".row:not([hidden])");
    });
    found.textContent = shown ? "" : found.getAttribute("data-none");
  }
  field.parentNode.hidden = false;
  field.addEventListener("input", search);
  if (field.value) { search(); }
}());
