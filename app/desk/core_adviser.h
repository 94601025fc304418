// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"
#include "reference/reference.h"

namespace winterlarder::desk {

//! The real adviser: records to question to answer, by the core library and what ships with it.
class CoreAdviser : public Adviser {
public:
    CoreAdviser(std::shared_ptr<const ReferenceData> reference, winter::Sampling sampling, int threads);

    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position, std::stop_token stop) const override;
    Outcome<AnsweredPointer> preview(const book::ColonyCase& record, int position, std::stop_token stop) const override;
    AnsweredPointer recall(const AnsweredPointer& answered, std::stop_token stop) const override;
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs combs) const override;

private:
    Outcome<AnsweredPointer> answerOver(winter::Sampling sampling, const book::ColonyCase& record, int position,
                                        const std::stop_token& stop) const;

    std::shared_ptr<const ReferenceData> reference_;
    winter::Sampling sampling_;
    int threads_;
};

//! As many winters as the command line uses, from the same seed: window and command line say the same.
inline constexpr winter::Sampling deskSampling{1, 2500};
inline constexpr int previewWinters = 500;

} // namespace winterlarder::desk
