// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/choice_words.h"

#include <QCoreApplication>

namespace winterlarder::text {

namespace {

QString tr(const char* words) { return QCoreApplication::translate("Choices", words); }

} // namespace

QString choice(book::FlowStrength flow) {
    switch (flow) {
    case book::FlowStrength::None: return tr("nothing more");
    case book::FlowStrength::Trickle: return tr("a trickle");
    case book::FlowStrength::Fair: return tr("a fair flow");
    case book::FlowStrength::Strong: return tr("a strong flow");
    }
    return {};
}

QString choice(book::Shell shell) {
    switch (shell) {
    case book::Shell::Timber: return tr("timber");
    case book::Shell::ThickTimber: return tr("thick timber");
    case book::Shell::Wrapped: return tr("wrapped");
    case book::Shell::Polystyrene: return tr("polystyrene");
    case book::Shell::Straw: return tr("straw");
    }
    return {};
}

QString choice(book::BeeKind kind) {
    switch (kind) {
    case book::BeeKind::Dark: return tr("dark bee");
    case book::BeeKind::Carniolan: return tr("carniolan");
    case book::BeeKind::Buckfast: return tr("buckfast");
    case book::BeeKind::Italian: return tr("italian");
    }
    return {};
}

QString choice(book::HeftWord heft) {
    switch (heft) {
    case book::HeftWord::Light: return tr("light");
    case book::HeftWord::Fair: return tr("fair");
    case book::HeftWord::Heavy: return tr("heavy");
    }
    return {};
}

QString choice(book::FeederKind kind) {
    switch (kind) {
    case book::FeederKind::Round: return tr("round feeder");
    case book::FeederKind::Top: return tr("tray on top");
    case book::FeederKind::Box: return tr("bucket in an empty box");
    case book::FeederKind::Contact: return tr("contact feeder");
    case book::FeederKind::Frame: return tr("frame feeder");
    case book::FeederKind::End: return tr("feeder at the end of the bars");
    }
    return {};
}

QString choice(book::FeedKind kind) {
    switch (kind) {
    case book::FeedKind::Syrup: return tr("syrup");
    case book::FeedKind::Fondant: return tr("fondant");
    case book::FeedKind::DrySugar: return tr("dry sugar");
    }
    return {};
}

QString choice(book::QueenColour colour) {
    switch (colour) {
    case book::QueenColour::White: return tr("white");
    case book::QueenColour::Yellow: return tr("yellow");
    case book::QueenColour::Red: return tr("red");
    case book::QueenColour::Green: return tr("green");
    case book::QueenColour::Blue: return tr("blue");
    }
    return {};
}

QString choice(book::FateKind fate) {
    switch (fate) {
    case book::FateKind::United: return tr("united with another");
    case book::FateKind::Sold: return tr("sold or given away");
    case book::FateKind::Dead: return tr("died");
    }
    return {};
}

QString choice(book::Temper temper) {
    switch (temper) {
    case book::Temper::Gentle: return tr("gentle");
    case book::Temper::Calm: return tr("calm");
    case book::Temper::Nervous: return tr("nervous");
    case book::Temper::Fierce: return tr("fierce");
    }
    return {};
}

QString choice(book::ManipulationKind what) {
    switch (what) {
    case book::ManipulationKind::CombsAdded: return tr("combs put in");
    case book::ManipulationKind::CombsRemoved: return tr("combs taken out");
    case book::ManipulationKind::CombsMoved: return tr("combs given to another colony");
    case book::ManipulationKind::BoxesAdded: return tr("boxes put on");
    case book::ManipulationKind::BoxesRemoved: return tr("boxes taken off");
    case book::ManipulationKind::BoxesMoved: return tr("boxes given to another colony");
    }
    return {};
}

QString choice(book::VisitKind what) {
    switch (what) {
    case book::VisitKind::Syrup: return tr("give syrup");
    case book::VisitKind::Fondant: return tr("lay on fondant");
    case book::VisitKind::Check: return tr("check and weigh");
    }
    return {};
}

QString choice(book::VisitState state) {
    switch (state) {
    case book::VisitState::Planned: return tr("planned");
    case book::VisitState::Done: return tr("done");
    case book::VisitState::Skipped: return tr("skipped");
    }
    return {};
}

QString choice(book::SightingKind saw) {
    switch (saw) {
    case book::SightingKind::Flying: return tr("bees flying");
    case book::SightingKind::Cluster: return tr("the cluster");
    case book::SightingKind::Stores: return tr("stores under the cover");
    case book::SightingKind::Dead: return tr("dead");
    }
    return {};
}

} // namespace winterlarder::text
