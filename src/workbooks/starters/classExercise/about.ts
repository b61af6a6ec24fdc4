export const ABOUT = {
  id: "class-exercise",
  title: "Class exercise",
  purpose:
    "Gives each student of a class their own numbers for the chain from the plant to the valves, marks what they hand in, says what lies behind a wrong answer, and shows which mistakes the class makes.",
  steps: [
    "On Inputs put your class list, a seed word for the term, the ranges of the eight numbers and the tolerances. A new seed makes new numbers for all.",
    'On Work read the column "draw". Where it says redraw, a wrong method gives nearly the right answer on these numbers. Copy the column "counter to try", paste it as values over the counters on Inputs, and again until all say ok.',
    "To hand out: save a copy of the workbook, delete all its sheets but Inputs, Student and Working, and give that copy (not of the plain workbook: its student's sheet takes the numbers from Work). Never hide sheets instead: a hidden sheet is shown with two clicks, key and all.",
    "Students need the functions: the add-in, or the page with the browser sheet, which opens that copy without installing anything. Where neither is there, choose each ID on Student, print the sheet, and take answers on paper.",
    "A student chooses the ID on Student, fills in six steps, and sees after each what it is worth. Set the level on Inputs: 1 for a first attempt, 2 for a second; the working comes last.",
    "From each student take the row to hand in, and paste it as values into the student's row on Answers.",
    "Read Result and Diagnosis. For the record copy the codes from Result and paste them as values on Record: values stay what they were when seed, tolerance or answers change later.",
    "Copy means copying the cells; paste as values means Paste Special, Values (Ctrl+Shift+V in most spreadsheets).",
  ],
  cautions: [
    "Practice, not exam security: who can type the functions can see the answers, and who knows the seed can draw any other student's numbers.",
    "A wrong key spreads through a class: Checks works every key by a second route. Look there before you hand out and before you mark.",
    "Numbers of an exercise are for the exercise. Measure before you water anything by them.",
  ],
};
