<#-- Searching by typing: the one script there is, on the list alone. Without it the list is whole.
  A jar's code, or all the words that a phone reads from its label, finds that jar. -->
"use strict";
(function () {
  var field = document.getElementById("search"), found = document.getElementById("found");
  var rows = Array.prototype.slice.call(document.querySelectorAll(".row"));
  var sections = Array.prototype.slice.call(document.querySelectorAll("main section"));
  function plain(text) {
    return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
  }
  function numbers(row) {
    return Array.prototype.slice.call(row.querySelectorAll(".jars li"));
  }
  var texts = rows.map(function (row) {
    var section = row.closest("section").querySelector("h2, h3");
    return plain(row.textContent + " " + section.textContent);
  });
  function search() {
    var typed = plain(field.value), code = /(\d{6}[a-z]+-[0-9a-z])(?:\/0*(\d+))?/.exec(typed);
    var wanted = code ? Number(code[2]) : 0;
    var words = code ? [code[1]] : typed.split(/\s+/).filter(Boolean), shown = 0;
    rows.forEach(function (row, i) {
      var jars = numbers(row), left = jars.length === 0;
      jars.forEach(function (jar) {
        jar.hidden = wanted > 0 && Number(jar.textContent) !== wanted;
        left = left || !jar.hidden;
      });
      row.hidden = !left || !words.every(function (word) { return texts[i].indexOf(word) >= 0; });
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
