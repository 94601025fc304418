// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_drawing_accessible.h"

#include "combs/comb_drawing.h"
#include "models/words.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>

#include <cmath>

namespace winterlarder::desk {

namespace {

// Something of the drawing that is no widget: one comb, or one zone of it.
class Part : public QAccessibleInterface {
public:
    Part(CombDrawing* drawing, int comb) : drawing_(drawing), comb_(comb) {}

    bool isValid() const override { return drawing_ && comb_ < static_cast<int>(drawing_->combs().size()); }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return drawing_ ? drawing_->window()->windowHandle() : nullptr; }
    QRect rect() const override {
        if (!isValid()) return {};
        const QRect face = drawing_->faceOf(comb_).toAlignedRect();
        return {drawing_->mapToGlobal(face.topLeft()), face.size()};
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->rect().contains(x, y)) return child(i);
        return nullptr;
    }
    void setText(QAccessible::Text, const QString&) override {}

protected:
    const DrawnComb& comb() const { return drawing_->combs()[static_cast<std::size_t>(comb_)]; }
    bool isChosen() const { return drawing_->chosen() == comb_; }

    QPointer<CombDrawing> drawing_;
    int comb_;
};

class ZonePart : public Part, public QAccessibleValueInterface {
public:
    ZonePart(CombDrawing* drawing, int comb, Zone zone, QAccessibleInterface* parent)
        : Part(drawing, comb), zone_(zone), parent_(parent) {}

    QAccessibleInterface* parent() const override { return parent_; }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::Slider; }
    QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) state.invalid = true;
        else state.selected = isChosen() && zoneOf(drawing_->picked()) == zone_;
        state.selectable = true;
        return state;
    }
    QString text(QAccessible::Text kind) const override {
        if (!isValid()) return {};
        if (kind == QAccessible::Name) return words::zone(zone_);
        if (kind == QAccessible::Value) return words::percent(shareOf(comb().record, zone_));
        if (kind == QAccessible::Description) return CombDrawing::tr("Share of the comb: %1").arg(words::zone(zone_));
        return {};
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ValueInterface ? static_cast<QAccessibleValueInterface*>(this) : nullptr;
    }

    QVariant currentValue() const override {
        return isValid() ? QVariant(std::round(100 * shareOf(comb().record, zone_))) : QVariant();
    }
    void setCurrentValue(const QVariant& value) override {
        if (isValid()) drawing_->setShare(comb_, fieldOf(zone_), value.toDouble() / 100);
    }
    QVariant maximumValue() const override { return 100; }
    QVariant minimumValue() const override { return 0; }
    QVariant minimumStepSize() const override { return 1; }

private:
    Zone zone_;
    QAccessibleInterface* parent_;
};

class CombPart : public Part {
public:
    CombPart(CombDrawing* drawing, int comb) : Part(drawing, comb) {
        for (const auto zone : allZones)
            zones_.push_back(QAccessible::registerAccessibleInterface(new ZonePart(drawing, comb, zone, this)));
    }
    ~CombPart() override {
        for (const auto id : zones_) QAccessible::deleteAccessibleInterface(id);
    }

    QAccessibleInterface* parent() const override {
        return drawing_ ? QAccessible::queryAccessibleInterface(drawing_) : nullptr;
    }
    QAccessibleInterface* child(int index) const override {
        return index >= 0 && index < childCount()
                   ? QAccessible::accessibleInterface(zones_[static_cast<std::size_t>(index)])
                   : nullptr;
    }
    int childCount() const override { return static_cast<int>(zones_.size()); }
    int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < childCount(); ++i)
            if (this->child(i) == child) return i;
        return -1;
    }
    QAccessibleInterface* childAt(int, int) const override {
        return nullptr;
    } // the zones overlap; the comb speaks for them
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.focusable = state.selectable = true;
        if (!isValid()) state.invalid = true;
        else {
            state.selected = isChosen();
            state.focused = isChosen() && drawing_->hasFocus();
        }
        return state;
    }
    QString text(QAccessible::Text kind) const override {
        if (!isValid()) return {};
        if (kind == QAccessible::Name) return comb().name;
        if (kind == QAccessible::Value) return comb().kilograms;
        if (kind == QAccessible::Description) return comb().spoken;
        return {};
    }

private:
    std::vector<QAccessible::Id> zones_;
};

class DrawingPart : public QAccessibleWidget {
public:
    explicit DrawingPart(CombDrawing* drawing) : QAccessibleWidget(drawing, QAccessible::List), drawing_(drawing) {}
    ~DrawingPart() override {
        for (const auto id : parts_) QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(drawing_->combs().size()); }
    QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount()) return nullptr;
        while (static_cast<int>(parts_.size()) <= index)
            parts_.push_back(
                QAccessible::registerAccessibleInterface(new CombPart(drawing_, static_cast<int>(parts_.size()))));
        return QAccessible::accessibleInterface(parts_[static_cast<std::size_t>(index)]);
    }
    int indexOfChild(const QAccessibleInterface* wanted) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i) == wanted) return i;
        return -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        return child(drawing_->combAt(drawing_->mapFromGlobal(QPoint(x, y))));
    }
    QAccessibleInterface* focusChild() const override {
        return drawing_->hasFocus() ? child(drawing_->chosen()) : nullptr;
    }

private:
    CombDrawing* drawing_;
    mutable std::vector<QAccessible::Id> parts_;
};

QAccessibleInterface* make(const QString&, QObject* object) {
    auto* drawing = qobject_cast<CombDrawing*>(object);
    return drawing ? new DrawingPart(drawing) : nullptr;
}

} // namespace

void speakCombDrawings() {
    static const bool once = [] {
        QAccessible::installFactory(make);
        return true;
    }();
    (void)once;
}

} // namespace winterlarder::desk
