// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/comb_edits.h"

#include <QString>

#include <optional>
#include <utility>
#include <vector>

namespace winterlarder::desk {

//! What digits set: a zone, or how much of the outline is built.
enum class CombField { Capped, Open, Brood, BeeBread, Built };
std::optional<Zone> zoneOf(CombField field);
CombField fieldOf(Zone zone);
double shareOf(const book::CombRecord& comb, CombField field);
book::CombRecord withShare(const book::CombRecord& comb, CombField field, double share);
//! "capped", "built".
QString nameOf(CombField field);
//! The key that picks it, as printed on the keyboard; translated with the names.
QString letterOf(CombField field);

//! A comb to be changed, as the drawing asks for it.
struct CombEdit {
    int comb = -1;
    book::CombRecord record;
};

//! Typing on the comb drawing. A letter picks a zone and it stays picked from comb to comb; with Shift it gives it all the cells
//! that are empty. A digit sets tenths, a second one refines it to hundredths, a third begins anew. All digits typed
//! after another start from the comb as it was before the first, so that a mistyped one costs the other zones nothing.
//! Plus and minus change it by 5 %. F goes through how the comb was seen, W is the window, E or Delete empties the comb.
//! Tested: tests/app/comb_typing_test.cpp.
class CombTyping {
public:
    CombField picked() const { return picked_; }
    void pick(CombField field);

    //! What a key does to the comb as it is now; nothing where it changes none (it may still pick).
    struct Typed {
        bool taken = false;
        std::optional<CombEdit> edit;
    };
    Typed type(const QString& text, bool shift, int comb, const book::CombRecord& record);
    Typed emptyComb(int comb, const book::CombRecord& record);
    //! The comb holds what the comb entered last holds (else `before`).
    Typed repeat(int comb, const book::CombRecord& record, const book::CombRecord* before);
    //! A comb was entered by other means; repeating repeats it.
    void entered(const book::CombRecord& record);
    //! Another colony, another look: nothing to repeat.
    void forget();

private:
    CombEdit digit(int value, int comb, const book::CombRecord& record);
    CombEdit share(double value, int comb, const book::CombRecord& from);
    CombEdit done(CombEdit edit);

    CombField picked_ = CombField::Capped;
    std::optional<book::CombRecord> last_; //!< what repeating repeats
    int typedInto_ = -1;
    std::optional<book::CombRecord> before_; //!< the comb before the first digit
    std::optional<book::CombRecord> after_;  //!< what typing made of it
    std::optional<int> tenths_;              //!< a first digit that may be refined
};

//! Every key that types on a comb, as printed on the keyboard ("Shift+C"), with what it does; keys that do one thing together.
std::vector<std::pair<QStringList, QString>> typingKeys();

} // namespace winterlarder::desk
