// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"
#include "text/grounds/grounds.h"

#include <initializer_list>
#include <utility>

//! What the grounds of both kinds of answer are made of.
namespace winterlarder::text {

//! Writes the grounds of one number, line by line: what the grounds of both kinds of answer have in common.
class GroundsWriter {
protected:
    GroundsWriter(const ReferenceData& reference, const WordStyle& style) : reference_(reference), style_(style) {}

    void line(const QString& said, std::vector<std::string> sources = {}) {
        lines_.push_back({said, std::move(sources)});
    }
    //! Of an answer's own reasons those that say how the number came about, each with its sources.
    void remarks(const std::vector<Remark>& reasons, std::initializer_list<const char*> ids);
    void bracketsLine();                //!< what the two figures in brackets are
    void otherWintersLine(Share share); //!< how far the share is off by chance
    void forageRuleLine();              //!< how first forage is told from a climate
    void fondantLine();                 //!< what fondant becomes
    std::optional<Grounds> under(const QString& title) { return Grounds{title, std::move(lines_)}; }
    std::optional<Grounds> ofReserve(Mass reserve, double shortRisk);

    const ReferenceData& reference_;
    const WordStyle& style_;

private:
    std::vector<GroundsLine> lines_;
};

//! Where it is written how exact such evidence is.
std::vector<std::string> sourcesOfEvidence(stores::EvidenceKind kind);
QString temperatureAt(double degreesC, const WordStyle& style); //!< "34.5 \u00b0C"
QString smallMass(double gram, const WordStyle& style);         //!< "0.15 g"

} // namespace winterlarder::text
