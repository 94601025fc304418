#!/usr/bin/python3 -B
# SPDX-License-Identifier: GPL-3.0-or-later
"""From the first start to an answer, and again from the written book: the real program on a screen of its own, used with keys and
mouse, heard as a screen reader hears it, and checked against the command line."""

import sys

from needed import end_where_something_is_missing

end_where_something_is_missing()

import hands  # noqa: E402  all that follows needs what was looked for
from stage import options_of, run  # noqa: E402
from written_book import WrittenBook, difference  # noqa: E402

DAY = "2026-09-14"
YARD = "Quince lane"
COLONY = "Bramble"
LAST = 10  # the place of the last comb
LIMIT = 100  # seconds for all of it


# ---- the first evening ---------------------------------------------------------------------------------------------------


def answer_three_questions(keeper):
    keeper.write_into("text", "Where the bees stand", "halif")
    keeper.program.find("list item", "Halifax, Nova Scotia")
    hands.keys("Return")
    keeper.program.find("label", "Halifax, Nova Scotia, Canada: weather of Halifax")
    keeper.write_into("text", "Name of the yard", YARD)
    keeper.write_into("text", "Find a hive format by any word", "us modified dadant brood")
    hands.keys("Return")
    keeper.write_into("text", "Name of colony 1", COLONY)
    keeper.write_into("spin button", "Boxes of colony 1 in winter", "1")
    keeper.check_next("kilograms and litres", "pounds and US gallons")
    keeper.press("Begin the book")
    notice = keeper.program.find("label", "Your book is kept in").get_name()
    return notice.removeprefix("Your book is kept in ").split(". Everything")[0]


def look_at_combs(keeper):
    """Ten combs by keys alone: brood under honey on three, honey on seven."""
    keeper.press("New look")
    assert len(keeper.combs()) == 11, f"a box of this hive holds eleven combs, not {len(keeper.combs())}"
    hands.keys("b", "6", "c", "2", "Right", "space", "space")
    keeper.await_comb(2, "capped 20 %, open nectar 0 %, brood 60 %")
    hands.keys("c", "6", "5", "Right", *["space"] * 6)
    keeper.await_comb(9, "capped 65 %, open nectar 0 %, brood 0 %")


def count_bees(keeper):
    keeper.choose("How the bees were counted", "f", "frames covered")
    keeper.write_into("spin button", "Number of frames, seams or bees", "7")
    hands.keys("Return")


def fill_last_comb(keeper):
    """With the mouse: the honey is drawn down from under the top bar."""
    keeper.drag_within_comb(LAST, 0.01, 0.4)
    keeper.await_other_comb(LAST, "capped 0 %")


def first_evening(keeper):
    keeper.sit_down()
    file = answer_three_questions(keeper)
    keeper.program.find("list item", f"{COLONY}: cannot say")
    keeper.await_answer("To answer, first: how many frames do the bees cover")
    look_at_combs(keeper)
    count_bees(keeper)
    without_last = keeper.await_answer("Feed")
    fill_last_comb(keeper)
    answer = keeper.await_answer("Feed", other_than=without_last)
    combs = keeper.combs()
    keeper.quit()
    return file, answer, without_last, combs


# ---- the second evening --------------------------------------------------------------------------------------------------


def find_again(keeper, answer, combs):
    keeper.sit_down()
    keeper.program.find("list item", f"{YARD}, the whole yard")
    keeper.tab_to("list", "The yard and its colonies")
    hands.keys("Down")
    found = keeper.await_answer("Feed")
    assert found == answer, f"the first evening it was answered\n  {answer}\nand the second\n  {found}"
    assert keeper.combs() == combs, difference("the combs of the first evening and of the second", combs, keeper.combs())


def undo_last_comb(keeper, answer, without_last, combs):
    hands.keys("ctrl+z")
    keeper.await_comb(LAST, "capped 0 %")
    undone = keeper.await_answer("Feed", other_than=answer)
    assert undone == without_last, f"before the last comb it was answered\n  {without_last}\nand with it undone\n  {undone}"
    others = keeper.combs()[:LAST]
    assert others == combs[:LAST], difference("the other combs before and after undoing", combs[:LAST], others)


def second_evening(keeper, answer, without_last, combs):
    find_again(keeper, answer, combs)
    undo_last_comb(keeper, answer, without_last, combs)
    keeper.quit()


# ---- around it -----------------------------------------------------------------------------------------------------------


def two_evenings(keeper, cli):
    file, answer, without_last, combs = first_evening(keeper)
    book = WrittenBook(cli, file, COLONY, DAY)
    book.must_say(answer)
    book.must_hold(combs)
    second_evening(keeper, answer, without_last, combs)
    book.must_say(without_last)
    book.must_hold(combs[:LAST] + ["Comb 11: capped 0 %, open nectar 0 %, brood 0 %"])
    print(f"read, written, found again and undone: {answer}")


if __name__ == "__main__":
    given = options_of(__doc__).parse_args()
    sys.exit(run(given, DAY, LIMIT, lambda keeper: two_evenings(keeper, given.cli)))
