// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/format_field.h"

#include "combs/comb_shape.h"
#include "hive/hive.h"
#include "models/words.h"
#include "support/plain_letters.h"
#include "theme/colours.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int rowsSeen = 7;
constexpr double widestMm = 460; // all outlines on one scale, so that they can be compared
constexpr const char* usualFirst = "langstroth-deep";

QPixmap outlineOf(const HiveFormat& format, QSize size, const Colours& colours, double ratio) {
    QPixmap drawn(size * ratio);
    drawn.setDevicePixelRatio(ratio);
    drawn.fill(Qt::transparent);
    QPainter painter(&drawn);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto outline = hive::combFormat(format).outline;
    const double scale = size.width() / widestMm, wide = std::max(outline.top, outline.bottom).value() * scale;
    constexpr double bar = 2;
    const QRectF face((size.width() - wide) / 2, 1 + bar, wide, outline.height.value() * scale);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.wood);
    painter.drawRect(QRectF(face.left() - 2, 1, face.width() + 4, bar));
    painter.setPen(QPen(colours.combEdge, 1));
    painter.setBrush(colours.empty);
    painter.drawPath(shapeOf(outline, {}, face).full);
    return drawn;
}

QString measuresInWords(const HiveFormat& format) {
    const QString size =
        FormatField::tr("comb %1 by %2").arg(words::length(format.combWidth), words::length(format.combHeight));
    return format.isOneRoom()
               ? words::worded(FormatField::tr("%1, one room of %2 %{combs}")).arg(size).arg(format.combsPerBox)
               : FormatField::tr("%1, %2 in a box").arg(size).arg(format.combsPerBox);
}

bool beginsAWord(const std::vector<std::string>& words, const std::string& typed) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) { return word.starts_with(typed); });
}

} // namespace

std::vector<const HiveFormat*> formatsNamed(const ReferenceData& reference, const QString& text) {
    const auto typed = plainWords(text.toStdString());
    std::vector<const HiveFormat*> named;
    for (const auto& format : reference.formats) {
        const auto words = plainWords(format.name + ' ' + format.family + ' ' + format.region);
        if (std::all_of(typed.begin(), typed.end(), [&](const std::string& word) { return beginsAWord(words, word); }))
            named.push_back(&format);
    }
    return named;
}

FormatField::FormatField(QWidget* parent) : QWidget(parent) {
    search_ = new QLineEdit(this);
    search_->setAccessibleName(tr("Find a hive format by any word"));
    search_->setPlaceholderText(tr("find: national, dadant, top bar, deep\u2026"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Hive format"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setWordWrap(true);
    const int line = fontMetrics().height();
    list_->setIconSize({line * 3, line * 3});
    list_->setMinimumHeight(rowsSeen * (2 * line + 8));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(3);
    down->addWidget(search_);
    down->addWidget(list_, 1);
    setFocusProxy(search_);
    connect(search_, &QLineEdit::textChanged, this, &FormatField::fill);
    connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (filling_ || !item) return;
        byHand_ = true;
        take(item);
    });
}

void FormatField::useReference(std::shared_ptr<const ReferenceData> reference) {
    reference_ = std::move(reference);
    if (chosen_.empty() && !reference_->formats.empty())
        chosen_ = reference_->format(usualFirst) ? usualFirst : reference_->formats.front().id;
    fill();
}

void FormatField::suggest(const std::string& country, const QString& name) {
    if (!reference_ || country == country_) return;
    country_ = country;
    countryName_ = name;
    const auto usual =
        std::find_if(reference_->formats.begin(), reference_->formats.end(), [&](const HiveFormat& format) {
            return std::find(format.countries.begin(), format.countries.end(), country) != format.countries.end();
        });
    if (!byHand_ && usual != reference_->formats.end()) chosen_ = usual->id;
    fill();
    emit chosen();
}

void FormatField::choose(const std::string& id) {
    byHand_ = true;
    chosen_ = id;
    fill();
    emit chosen();
}

const HiveFormat* FormatField::format() const { return reference_ ? reference_->format(chosen_) : nullptr; }

void FormatField::addGroup(const QString& title, const std::vector<const HiveFormat*>& formats) {
    if (formats.empty()) return;
    auto* heading = new QListWidgetItem(title, list_);
    heading->setFlags(Qt::NoItemFlags);
    QFont bold = font();
    bold.setBold(true);
    heading->setFont(bold);
    heading->setForeground(coloursOf(*this).text);
    const QSize size = list_->iconSize();
    for (const auto* format : formats) {
        auto* item = new QListWidgetItem(tr("%1\n%2", "a hive format, its measures")
                                             .arg(QString::fromStdString(format->name), measuresInWords(*format)),
                                         list_);
        item->setIcon(QIcon(outlineOf(*format, size, coloursOf(*this), devicePixelRatioF())));
        item->setData(Qt::UserRole, QString::fromStdString(format->id));
    }
}

// By family in the order of the table; what is usual in the country first, and there alone.
void FormatField::fill() {
    if (!reference_) return;
    filling_ = true;
    list_->clear();
    std::vector<std::pair<std::string, std::vector<const HiveFormat*>>> families;
    std::vector<const HiveFormat*> usual;
    for (const auto* format : formatsNamed(*reference_, search_->text())) {
        if (std::find(format->countries.begin(), format->countries.end(), country_) != format->countries.end()) {
            usual.push_back(format);
            continue;
        }
        auto family = std::find_if(families.begin(), families.end(),
                                   [&](const auto& each) { return each.first == format->family; });
        if (family == families.end()) family = families.insert(families.end(), {format->family, {}});
        family->second.push_back(format);
    }
    addGroup(tr("Usual in %1").arg(countryName_), usual);
    for (const auto& [family, formats] : families) addGroup(QString::fromStdString(family), formats);
    if (list_->count() == 0)
        new QListWidgetItem(
            tr("No format has these words. Fewer letters find more; own measures are entered with the colony's hive."),
            list_);
    auto* current = itemOf(chosen_);
    list_->setCurrentItem(current);
    if (current) list_->scrollToItem(current);
    filling_ = false;
}

void FormatField::take(QListWidgetItem* item) {
    const auto id = item->data(Qt::UserRole).toString().toStdString();
    if (id.empty() || id == chosen_) return;
    chosen_ = id;
    emit chosen();
}

QListWidgetItem* FormatField::itemOf(const std::string& id) const {
    for (int row = 0; row < list_->count(); ++row)
        if (list_->item(row)->data(Qt::UserRole).toString().toStdString() == id) return list_->item(row);
    return nullptr;
}

QListWidgetItem* FormatField::firstItem() const {
    for (int row = 0; row < list_->count(); ++row)
        if (!list_->item(row)->data(Qt::UserRole).toString().isEmpty()) return list_->item(row);
    return nullptr;
}

// Enter takes the first found, down goes into the list.
bool FormatField::eventFilter(QObject* watched, QEvent* event) {
    if (watched != search_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    auto* first = list_->currentItem() ? list_->currentItem() : firstItem();
    if ((key == Qt::Key_Return || key == Qt::Key_Enter) && first) return list_->setCurrentItem(first), true;
    if (key == Qt::Key_Down && first) return list_->setFocus(), list_->setCurrentItem(first), true;
    return QWidget::eventFilter(watched, event);
}

void FormatField::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::LocaleChange)
        fill();
}

} // namespace winterlarder::desk
