// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/choice_words.h"

#include "text/contexts.h"

namespace winterlarder::text {

QString choice(book::FlowStrength flow) {
    switch (flow) {
    case book::FlowStrength::None: return say::Choices::tr("no more than weeds and ivy bring");
    case book::FlowStrength::Trickle: return say::Choices::tr("a trickle");
    case book::FlowStrength::Fair: return say::Choices::tr("a fair flow");
    case book::FlowStrength::Strong: return say::Choices::tr("a strong flow");
    }
    return {};
}

QString choice(book::Shell shell) {
    switch (shell) {
    case book::Shell::Timber: return say::Choices::tr("timber");
    case book::Shell::ThickTimber: return say::Choices::tr("thick timber");
    case book::Shell::Wrapped: return say::Choices::tr("wrapped");
    case book::Shell::Polystyrene: return say::Choices::tr("polystyrene");
    case book::Shell::Straw: return say::Choices::tr("straw");
    }
    return {};
}

QString choice(book::BeeKind kind) {
    switch (kind) {
    case book::BeeKind::Dark: return say::Choices::tr("dark bee");
    case book::BeeKind::Carniolan: return say::Choices::tr("carniolan");
    case book::BeeKind::Buckfast: return say::Choices::tr("buckfast");
    case book::BeeKind::Italian: return say::Choices::tr("italian");
    }
    return {};
}

QString choice(book::HeftWord heft) {
    switch (heft) {
    case book::HeftWord::Light: return say::Choices::tr("light");
    case book::HeftWord::Fair: return say::Choices::tr("fair");
    case book::HeftWord::Heavy: return say::Choices::tr("heavy");
    }
    return {};
}

QString choice(book::FeederKind kind) {
    switch (kind) {
    case book::FeederKind::Round: return say::Choices::tr("round feeder");
    case book::FeederKind::Top: return say::Choices::tr("tray on top");
    case book::FeederKind::Box: return say::Choices::tr("bucket in an empty box");
    case book::FeederKind::Contact: return say::Choices::tr("contact feeder");
    case book::FeederKind::Frame: return say::Choices::tr("frame feeder");
    case book::FeederKind::End: return say::Choices::tr("feeder at the end of the bars");
    }
    return {};
}

QString choice(book::FeedKind kind) {
    switch (kind) {
    case book::FeedKind::Syrup: return say::Choices::tr("syrup");
    case book::FeedKind::Fondant: return say::Choices::tr("fondant");
    case book::FeedKind::DrySugar: return say::Choices::tr("dry sugar");
    }
    return {};
}

QString choice(book::QueenColour colour) {
    switch (colour) {
    case book::QueenColour::White: return say::Choices::tr("white");
    case book::QueenColour::Yellow: return say::Choices::tr("yellow");
    case book::QueenColour::Red: return say::Choices::tr("red");
    case book::QueenColour::Green: return say::Choices::tr("green");
    case book::QueenColour::Blue: return say::Choices::tr("blue");
    }
    return {};
}

QString choice(book::FateKind fate) {
    switch (fate) {
    case book::FateKind::United: return say::Choices::tr("united with another");
    case book::FateKind::Sold: return say::Choices::tr("sold or given away");
    case book::FateKind::Dead: return say::Choices::tr("died");
    }
    return {};
}

QString choice(book::Temper temper) {
    switch (temper) {
    case book::Temper::Gentle: return say::Choices::tr("gentle");
    case book::Temper::Calm: return say::Choices::tr("calm");
    case book::Temper::Nervous: return say::Choices::tr("nervous");
    case book::Temper::Fierce: return say::Choices::tr("fierce");
    }
    return {};
}

QString choice(book::ManipulationKind what, const WordStyle& style) {
    switch (what) {
    case book::ManipulationKind::CombsAdded: return worded(say::Choices::tr("%{combs} put in"), style);
    case book::ManipulationKind::CombsRemoved: return worded(say::Choices::tr("%{combs} taken out"), style);
    case book::ManipulationKind::CombsMoved: return worded(say::Choices::tr("%{combs} given to another colony"), style);
    case book::ManipulationKind::BoxesAdded: return say::Choices::tr("boxes put on");
    case book::ManipulationKind::BoxesRemoved: return say::Choices::tr("boxes taken off");
    case book::ManipulationKind::BoxesMoved: return say::Choices::tr("boxes given to another colony");
    }
    return {};
}

QString choice(book::VisitKind what) {
    switch (what) {
    case book::VisitKind::Syrup: return say::Choices::tr("give syrup");
    case book::VisitKind::Fondant: return say::Choices::tr("lay on fondant");
    case book::VisitKind::Check: return say::Choices::tr("check and weigh");
    }
    return {};
}

QString choice(book::VisitState state) {
    switch (state) {
    case book::VisitState::Planned: return say::Choices::tr("planned");
    case book::VisitState::Done: return say::Choices::tr("done");
    case book::VisitState::Skipped: return say::Choices::tr("skipped");
    }
    return {};
}

QString choice(book::SightingKind saw) {
    switch (saw) {
    case book::SightingKind::Flying: return say::Choices::tr("bees flying");
    case book::SightingKind::Cluster: return say::Choices::tr("the cluster");
    case book::SightingKind::Stores: return say::Choices::tr("stores under the cover");
    case book::SightingKind::Dead: return say::Choices::tr("dead");
    }
    return {};
}

QString choice(book::BroodPattern brood) {
    switch (brood) {
    case book::BroodPattern::None: return say::Choices::tr("no brood");
    case book::BroodPattern::Solid: return say::Choices::tr("solid");
    case book::BroodPattern::Patchy: return say::Choices::tr("patchy");
    }
    return {};
}

} // namespace winterlarder::text
