// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/quantity_field.h"

#include "models/plain_tip.h"
#include "models/words.h"

#include <QEvent>
#include <QStyle>

#include <cmath>

namespace winterlarder::desk {

namespace {

bool isWhole(double value) { return std::abs(value - std::round(value)) < 0.05; }

double kilogramsIn(MassUnit unit) { return massOf(1, unit).value(); }

// A place may lie below the sea, which no other length does.
Outcome<Length> parseHeight(const std::string& typed, const NumberStyle& style) {
    for (const std::string_view minus : {"-", "\u2212"})
        if (typed.starts_with(minus)) {
            const auto deep = parseHeight(typed.substr(minus.size()), style);
            return deep ? Outcome<Length>(-*deep) : deep;
        }
    return parseLength(typed, words::shownHeight(), style);
}

} // namespace

QuantityField::QuantityField(QWidget* parent, const QString& name, Kind kind, const FieldLimits* limits)
    : QLineEdit(parent), kind_(kind) {
    if (limits) limits_ = *limits;
    setAccessibleName(name);
    setMaximumWidth(fontMetrics().averageCharWidth() * 22);
    nameUnit();
    connect(this, &QLineEdit::textChanged, this, &QuantityField::check);
    connect(this, &QLineEdit::editingFinished, this, &QuantityField::finish);
    check();
}

void QuantityField::nameUnit() {
    const auto system = words::style().numbers.system;
    switch (kind_) {
    case Kind::Mass: return setPlaceholderText(words::name(words::shownMass()));
    case Kind::Volume: return setPlaceholderText(words::name(volumeUnit(system)));
    case Kind::Length: return setPlaceholderText(words::name(words::shownLength()));
    case Kind::Height: return setPlaceholderText(words::name(words::shownHeight()));
    case Kind::Temperature: return setPlaceholderText(words::name(words::shownTemperature()));
    case Kind::PricePerMass: return setPlaceholderText(tr("for a %1").arg(words::name(words::shownMass())));
    case Kind::Number:
    case Kind::Whole: return;
    }
}

QString QuantityField::written(double value) const {
    const auto style = words::style().numbers;
    const auto plain = [](std::string text) { return QString::fromStdString(text); };
    switch (kind_) {
    case Kind::Mass: return plain(format(Mass(value), style, 1));
    case Kind::Volume: return plain(format(Volume(value), style, 1));
    case Kind::Length:
        return style.system == UnitSystem::Metric ? plain(format(Length(value), style, isWhole(value) ? 0 : 1))
                                                  : words::length(Length(value)); // as a rule has it
    case Kind::Temperature: return plain(format(Temperature(value), style, 1));
    case Kind::Height: return words::height(value);
    case Kind::PricePerMass: return plain(formatNumber(value * kilogramsIn(words::shownMass()), style, 2));
    case Kind::Whole: return QString::number(value, 'f', 0);
    case Kind::Number: break;
    }
    QString text = plain(formatNumber(value, style, 6));
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (!text.back().isDigit()) text.chop(1);
    return text;
}

void QuantityField::changeEvent(QEvent* event) {
    QLineEdit::changeEvent(event);
    if (event->type() != QEvent::LocaleChange) return;
    nameUnit();
    if (!isModified()) show(last_);
}

void QuantityField::show(std::optional<double> value) {
    last_ = value;
    if (hasFocus() && isModified() && !fault().isEmpty()) return; // what was typed is never lost
    setText(value ? written(*value) : QString());
    setModified(false);
}

std::optional<double> QuantityField::value() const {
    QString fault;
    const auto read = this->read(fault);
    return fault.isEmpty() ? read : std::nullopt;
}

QString QuantityField::fault() const {
    QString fault;
    const auto read = this->read(fault);
    if (fault.isEmpty() && required_ && !read) return tr("Something must be written here.");
    return fault;
}

QString QuantityField::withinLimits(double value) const {
    const double least = limits_ ? limits_->minimum.value_or(-1e300) : 0;
    const double most = limits_ ? limits_->maximum.value_or(1e300) : 1e300;
    if (value >= least - 1e-9 && value <= most + 1e-9) return {};
    if (most > 1e299) return tr("It must be %1 or more.").arg(written(least));
    return tr("It must be between %1 and %2.").arg(written(least), written(most));
}

bool QuantityField::showsLast() const { return last_ && text().trimmed() == written(*last_); }

std::optional<double> QuantityField::read(QString& fault) const {
    const std::string typed = text().trimmed().toStdString();
    if (typed.empty()) return std::nullopt;
    if (showsLast()) return last_;
    const auto style = words::style().numbers;
    std::optional<double> value;
    const auto take = [&](const auto& outcome) {
        if (outcome.ok()) value = outcome->value();
        else
            fault = QString::fromStdString(
                outcome.problems().front().detail +
                (outcome.problems().front().remedy.empty() ? "" : "; " + outcome.problems().front().remedy));
    };
    switch (kind_) {
    case Kind::Mass: take(parseMass(typed, massUnit(style.system), style)); break;
    case Kind::Volume: take(parseVolume(typed, volumeUnit(style.system), style)); break;
    case Kind::Length: take(parseLength(typed, lengthUnit(style.system), style)); break;
    case Kind::Height:
        take(parseHeight(typed, style));
        if (value) value = valueIn(Length(*value), LengthUnit::Metre);
        break;
    case Kind::Temperature: take(parseTemperature(typed, temperatureUnit(style.system), style)); break;
    case Kind::PricePerMass:
    case Kind::Number:
    case Kind::Whole: {
        bool right = false;
        const double number = text().trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&right);
        if (!right) fault = tr("This is not a number.");
        else if (kind_ == Kind::Whole && number != static_cast<double>(static_cast<long long>(number)))
            fault = tr("It must be a whole number.");
        else value = kind_ == Kind::PricePerMass ? number / kilogramsIn(words::shownMass()) : number;
        break;
    }
    }
    if (value) fault = withinLimits(*value);
    return value;
}

void QuantityField::check() {
    const QString wrong = fault();
    setToolTip(plainTip(wrong.isEmpty() ? accessibleName() : wrong));
    setAccessibleDescription(wrong);
    if (property("faulty").toBool() == !wrong.isEmpty()) return;
    setProperty("faulty", !wrong.isEmpty());
    style()->unpolish(this);
    style()->polish(this);
}

void QuantityField::finish() {
    if (!isModified() || !fault().isEmpty()) return;
    const auto now = value();
    if (now == last_) return show(last_);
    last_ = now;
    setModified(false);
    if (now) setText(written(*now));
    emit valueEntered(now);
}

} // namespace winterlarder::desk
