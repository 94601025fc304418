#!/usr/bin/python3 -B
# SPDX-License-Identifier: GPL-3.0-or-later
"""Six new users, each from the first start to an answer, three by keys alone and three with the mouse (names and numbers are typed all the same):
the real program on a screen of its own, heard as a screen reader hears it."""

import sys

from needed import end_where_something_is_missing

end_where_something_is_missing()

import hands  # noqa: E402  all that follows needs what was looked for
from stage import options_of, run  # noqa: E402

LIMIT = 100  # seconds for one of them on a busy machine; a quiet one takes a tenth
FULL = "Combs full of stores"


# ---- what all of them do -------------------------------------------------------------------------------------------------


def begin_by_keys(keeper, town, found, hive, colony):
    keeper.sit_down()
    keeper.write_into("text", "Where the bees stand", town)
    keeper.program.find("list item", found)
    hands.keys("Return")
    keeper.program.find("label", f"{found}: weather of")
    keeper.write_into("text", "Find a hive format by any word", hive)
    hands.keys("Return")
    keeper.write_into("text", "Name of colony 1", colony)
    keeper.press("Begin the book")
    keeper.program.find("list item", f"{colony}: cannot say")


def begin_with_mouse(keeper, town, found, hive, colonies):
    """`hive`: what is typed to find it, and what is clicked then; nothing where it is as proposed."""
    keeper.sit_down()
    keeper.type_with_mouse("text", "Where the bees stand", town)
    keeper.click("list item", found)
    keeper.program.find("label", f"{found}: weather of")
    if hive:
        keeper.type_with_mouse("text", "Find a hive format by any word", hive[0])
        keeper.click("list item", hive[1])
    keeper.count_up("How many colonies", len(colonies) - 1)
    for number, colony in enumerate(colonies, 1):
        keeper.type_with_mouse("text", f"Name of colony {number}", colony)
    keeper.click("push button", "Begin the book")
    keeper.program.find("list item", f"{colonies[0]}: cannot say")


def number_with_mouse(keeper, name, number):
    keeper.type_with_mouse("spin button", name, number)
    hands.keys("Return")


def must_say(said, *words):
    for word in words:
        assert word in said, f"it says nothing of {word!r}:\n  {said}"
    print(said)


def row_of(keeper, colony):
    """What the list of the yard says of the colony."""
    return keeper.program.find("list item", f"{colony}: ").get_name()


# ---- by keys alone -------------------------------------------------------------------------------------------------------


def put_super_on(keeper, name):
    """A box of that format on top of the hive, which is a super."""
    keeper.press("Hive")
    keeper.program.find("push button", "One more box on top")
    hands.keys("alt+x")
    keeper.tab_to("combo box", "Format of box 2 from the floor")
    hands.keys("alt+Down")
    keeper.program.find("list item", name)
    hands.write(name)
    hands.keys("Return")
    keeper.program.find("combo box", name)
    keeper.tab_to("check box", "Box 2 is a super")
    hands.keys("space")
    keeper.press("Write down")


def british(keeper):
    """A single brood box with a super whose honey is for the keeper; combs are counted."""
    begin_by_keys(keeper, "hereford", "Hereford, England, United Kingdom", "british national brood", "Elder")
    put_super_on(keeper, "BS National shallow")
    for_me = "Is the super for you, or for the bees? For me"
    keeper.program.find("push button", for_me)
    keeper.take_hold()
    keeper.press(for_me)
    keeper.write_into("spin button", "Number of combs, seams or bees", "9")
    hands.keys("Return")
    keeper.await_answer("To answer, first: look at the combs")
    keeper.write_into("spin button", FULL, "3")
    hands.keys("Return")
    must_say(keeper.await_answer("Feed"), "sugar as syrup")


def bavarian(keeper):
    """One box, one side of it lifted with a hand scale."""
    begin_by_keys(keeper, "freising", "Freising, Bavaria, Germany", "zander 1.5", "Linde")
    hands.keys("ctrl+a", "8", "Return")
    keeper.await_answer("To answer, first: look at the combs, or heft or weigh the hive.")
    keeper.tab_to("combo box", "How the hive was weighed")
    hands.keys("alt+Down")
    keeper.program.find("list item", "one side lifted")
    hands.keys("Down", "Down", "Down", "Return")
    keeper.program.find("combo box", "one side lifted")
    keeper.write_into("text", "Weight, all of the hive", "18,5")
    hands.keys("Return")
    must_say(keeper.await_answer("Leave it"), "kg of sugar are likely to be wanted")


def january(keeper):
    """A light hive in winter."""
    begin_by_keys(keeper, "new glasgow, canada", "New Glasgow, Nova Scotia, Canada", "langstroth deep 10", "Russet")
    hands.keys("ctrl+a", "4", "Return")
    keeper.tab_to("combo box", "How the hive was weighed")
    hands.keys("h")
    keeper.tab_to("combo box", "How heavy it felt")
    hands.keys("l", "Return")
    must_say(keeper.await_answer("It is light"), "of fondant on the bees today")


# ---- with the mouse ------------------------------------------------------------------------------------------------------


def quebec(keeper):
    """Two deep boxes; the frames are painted."""
    begin_with_mouse(keeper, "sherbrooke, quebec", "Sherbrooke, Quebec, Canada", None, ["Maple"])
    number_with_mouse(keeper, "Number of", "10")
    keeper.click("push button", "Enter the frames")
    for comb in range(8):
        keeper.drag_within_comb(comb, 0.03, 0.8)
    must_say(keeper.await_answer("Feed"), "sugar as syrup")


def oregon(keeper):
    """Top bars; what is built is drawn up, honey is painted down."""
    begin_with_mouse(keeper, "eugene, or", "Eugene, Oregon, United States", ("top bar", "Kenya top-bar, common"), ["Madrone"])
    number_with_mouse(keeper, "Number of", "8")
    keeper.click("push button", "Enter the combs")
    for comb in range(3, 9):
        keeper.drag_within_comb(comb, 0.05, 0.75)
    must_say(keeper.await_answer("Feed"), " lb of sugar as syrup")


def mentor(keeper):
    """Three colonies, counted quickly; then the plan of the yard."""
    colonies = ["Ash", "Birch", "Cherry"]
    begin_with_mouse(keeper, "new glasgow, canada", "New Glasgow, Nova Scotia, Canada", None, colonies)
    for colony, full in zip(colonies, (4, 9, 7)):
        keeper.click("list item", f"{colony}: ")
        keeper.program.find("label", "To answer, first: how many")
        number_with_mouse(keeper, "Number of", "9")
        keeper.program.find("label", "To answer, first: look at")
        number_with_mouse(keeper, "Frames full of stores", f"{full}")
        keeper.program.wait_for(f"an answer for {colony}", lambda name=colony: "cannot say" not in row_of(keeper, name))
    keeper.click("list item", "Home yard, the whole yard")
    must_say(keeper.program.wait_for("sugar to buy", lambda: keeper.program.words("White sugar to buy")), "kg")
    for colony in colonies:
        keeper.program.find("table cell", colony)


USERS = {user.__name__: (user, day) for user, day in (
    (british, "2026-09-05"), (bavarian, "2026-08-20"), (january, "2027-01-15"),
    (quebec, "2026-09-10"), (oregon, "2026-09-20"), (mentor, "2026-09-14"))}


if __name__ == "__main__":
    parser = options_of(__doc__)
    parser.add_argument("--user", required=True, choices=USERS)
    given = parser.parse_args()
    user, day = USERS[given.user]
    sys.exit(run(given, day, LIMIT, user))
