// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

//! Under these names translators find words that belong to no class of the window. A bare tr() in a free function would be filed where
//! nobody looks for it when the program runs. Tested: tests/app/translations_test.cpp.
namespace winterlarder::say {

struct Arguments {
    Q_DECLARE_TR_FUNCTIONS(Arguments)
};
struct Choices {
    Q_DECLARE_TR_FUNCTIONS(Choices)
};
struct CombTyping {
    Q_DECLARE_TR_FUNCTIONS(CombTyping)
};
struct CommandLine {
    Q_DECLARE_TR_FUNCTIONS(CommandLine)
};
struct Days {
    Q_DECLARE_TR_FUNCTIONS(Days)
};
struct DrawnCombs {
    Q_DECLARE_TR_FUNCTIONS(DrawnCombs)
};
struct EntryForms {
    Q_DECLARE_TR_FUNCTIONS(EntryForms)
};
struct Fields {
    Q_DECLARE_TR_FUNCTIONS(Fields)
};
struct FollowSections {
    Q_DECLARE_TR_FUNCTIONS(FollowSections)
};
struct Following {
    Q_DECLARE_TR_FUNCTIONS(Following)
};
struct Glossary {
    Q_DECLARE_TR_FUNCTIONS(Glossary)
};
struct Grounds {
    Q_DECLARE_TR_FUNCTIONS(Grounds)
};
struct Guide {
    Q_DECLARE_TR_FUNCTIONS(Guide)
};
struct Learned {
    Q_DECLARE_TR_FUNCTIONS(Learned)
};
struct Photograph {
    Q_DECLARE_TR_FUNCTIONS(Photograph)
};
struct Places {
    Q_DECLARE_TR_FUNCTIONS(Places)
};
struct RecordRows {
    Q_DECLARE_TR_FUNCTIONS(RecordRows)
};
struct ScaleWords {
    Q_DECLARE_TR_FUNCTIONS(ScaleWords)
};
struct Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};
struct Steps {
    Q_DECLARE_TR_FUNCTIONS(Steps)
};
struct Story {
    Q_DECLARE_TR_FUNCTIONS(Story)
};
struct WindowWords {
    Q_DECLARE_TR_FUNCTIONS(WindowWords)
};
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};
struct YardPlan {
    Q_DECLARE_TR_FUNCTIONS(YardPlan)
};

} // namespace winterlarder::say
