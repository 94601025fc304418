// SPDX-License-Identifier: GPL-3.0-or-later
// What a book or a file says of itself is never read as markup: it could open files, and it would hide what it says.
#include "app/every_form.h"
#include "dialogs/backups_dialog.h"
#include "dialogs/grounds_popup.h"
#include "dialogs/help_window.h"
#include "dialogs/import_dialog.h"
#include "dialogs/scale_log_dialog.h"
#include "dialogs/why_window.h"
#include "fields/askable_label.h"
#include "pages/place_page.h"
#include "pages/story_page.h"
#include "pages/weather_part.h"
#include "pages/yard_view.h"
#include "photograph/photograph_window.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QMenuBar>
#include <QTabWidget>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextEdit>

namespace winterlarder::desk {

namespace {

const QString hostile = QStringLiteral("<b>x</b><img src=\"nowhere.png\">");
const QString raw = QStringLiteral("<img");

QString nameOf(const QObject* object) {
    const auto* parent = object->parent();
    return QStringLiteral("%1 %2 in %3")
        .arg(QLatin1String(object->metaObject()->className()), object->objectName(),
             parent ? QLatin1String(parent->metaObject()->className()) : QLatin1String("nothing"));
}

//! Goes through all of a window, as far as it is made, and counts where the words were found as plain words.
class Walk {
public:
    int labels = 0, tips = 0;

    void through(const QWidget& root) {
        for (const auto* label : root.findChildren<QLabel*>()) check(*label);
        for (const auto* edit : root.findChildren<QTextEdit*>()) check(*edit->document(), nameOf(edit));
        checkTip(root.toolTip(), nameOf(&root));
        for (const auto* widget : root.findChildren<QWidget*>()) checkTip(widget->toolTip(), nameOf(widget));
        for (const auto* action : root.findChildren<QAction*>()) checkTip(action->toolTip(), nameOf(action));
        for (const auto* view : root.findChildren<QAbstractItemView*>())
            if (view->model()) check(*view->model(), nameOf(view));
        for (const auto* box : root.findChildren<QComboBox*>()) check(*box->model(), nameOf(box));
    }

private:
    void check(const QLabel& label) {
        if (!label.text().contains(raw)) return;
        ++labels;
        EXPECT_EQ(label.textFormat(), Qt::PlainText)
            << nameOf(&label).toStdString() << ": " << label.text().toStdString();
    }
    void check(const QTextDocument& document, const QString& where) {
        for (auto block = document.begin(); block != document.end(); block = block.next())
            for (auto at = block.begin(); !at.atEnd(); ++at)
                EXPECT_FALSE(at.fragment().charFormat().isImageFormat()) << where.toStdString();
    }
    void checkTip(const QString& tip, const QString& where) {
        tips += tip.contains(QStringLiteral("img src")) ? 1 : 0;
        EXPECT_FALSE(tip.contains(raw) && Qt::mightBeRichText(tip)) << where.toStdString() << ": " << tip.toStdString();
    }
    void check(const QAbstractItemModel& model, const QString& where) {
        for (int column = 0; column < model.columnCount(); ++column) {
            checkTip(model.headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString(), where);
            for (int row = 0; row < model.rowCount(); ++row)
                for (const int role : {Qt::ToolTipRole, Qt::WhatsThisRole, Qt::StatusTipRole})
                    checkTip(model.index(row, column).data(role).toString(), where);
        }
    }
};

book::ColonyCase hive(const QString& name, std::size_t boxes, double capped, double covered) {
    auto record = invented::colony("", covered);
    record.colony = name.toStdString();
    record.yard = hostile.toStdString();
    record.hive.boxes.assign(boxes, record.hive.boxes.front());
    record.combs = std::vector<book::CombRecord>(10 * boxes, invented::comb(capped, 0, 0, 0));
    return record;
}

} // namespace

class ForeignWords : public invented::WindowDesk {
protected:
    ForeignWords() {
        answerReally();
        open({hive(hostile + QStringLiteral(" rich"), 2, 0.95, 10),
              hive(hostile + QStringLiteral(" needy"), 1, 0.1, 8)});
        const std::string words = hostile.toStdString();
        const auto id = entry().id;
        window.yard()->apply(book::SingleEdit(
            book::AddTreatment{{.colony = id, .date = invented::day("2026-09-01"), .what = words, .note = words}}));
        window.yard()->apply(
            book::SingleEdit(book::AddSighting{{.colony = id, .date = invented::day("2026-09-02"), .note = words}}));
        auto look = window.yard()->lookToEdit(id);
        look.note = words;
        window.yard()->writeLook(look);
        auto yard = *window.yard()->shownYard();
        yard.forageNotes = words;
        window.yard()->writeYard(yard);
        window.yard()->apply(book::SingleEdit(
            book::AddWeatherLog{{.yard = yard.id, .origin = words, .days = {{invented::day("2026-09-03"), 12}}}}));
        settle();
    }
    QString table(const QString& text) {
        QFile file(folder.filePath(QStringLiteral("<b>x<img src=a> weighings.csv")));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
        return file.fileName();
    }
    void pages(QTabWidget* tabs) {
        for (int page = 0; page < tabs->count(); ++page) {
            tabs->setCurrentIndex(page);
            settle();
            walk.through(window);
        }
    }
    void look(QWidget* dialog) {
        dialog->show();
        QTest::qWait(20);
        settle();
        walk.through(*dialog);
        delete dialog;
    }
    Walk walk;
};

TEST_F(ForeignWords, AreNoMarkupOnAnyPage) {
    window.choose({});
    pages(window.yardView()->pages());
    for (std::size_t at = 0; at < 2; ++at) {
        WindowDesk::look(at);
        pages(window.colonyView()->pages());
        for (int part = 0; part < 3; ++part) {
            window.colonyView()->story()->which()->setCurrentIndex(part);
            settle();
            walk.through(window);
        }
        window.explain(entry().id);
        walk.through(*window.whyWindow());
        EXPECT_TRUE(window.whyWindow()->windowTitle().contains(raw) || window.whyWindow()->text().contains(raw))
            << "told as it is written";
    }
    EXPECT_GT(walk.labels, 5) << "combs to move, the last table of temperatures, ...";
    EXPECT_GT(walk.tips, 5) << "the yard's list, what was written down, every step";
}

TEST_F(ForeignWords, AreNoMarkupInWhatIsOpenedBesideAPage) {
    int grounds = 0;
    for (std::size_t at = 0; at < 2; ++at) {
        WindowDesk::look(at);
        for (auto* label : window.findChildren<AskableLabel*>())
            for (int number = 0; number < text::askedNumbers; ++number) {
                emit label->numberClicked(static_cast<text::AskedNumber>(number), QPoint(10, 10));
                for (auto* popup : window.findChildren<GroundsPopup*>()) {
                    grounds += popup->said().isEmpty() ? 0 : 1;
                    walk.through(*popup);
                    popup->hide();
                }
            }
    }
    EXPECT_GT(grounds, 10) << "or this walks nothing";
    window.showWords();
    window.showKeys();
    const auto helps = window.findChildren<HelpWindow*>();
    EXPECT_EQ(helps.size(), 2);
    for (auto* help : helps) {
        help->searchLine()->setText(hostile);
        walk.through(*help);
    }
    look(new BackupsDialog(window.book(), &window));
    DrawnComb comb;
    comb.format = invented::format();
    comb.name = hostile;
    auto* photographs = new PhotographWindow(comb, &window);
    photographs->offerPictures({folder.filePath(hostile)});
    photographs->openPicture(folder.filePath(hostile)); // there is none, and that is said with its name
    ASSERT_TRUE(invented::waitFor([&] { return photographs->idle(); }));
    look(photographs);
}

TEST_F(ForeignWords, AreNoMarkupAmongTheBooksOpenedLately) {
    const auto tipsOfMenus = [this] {
        Walk menus;
        menus.through(*window.menuBar());
        return menus.tips;
    };
    const int before = tipsOfMenus();
    const QString book = folder.filePath(QStringLiteral("<b>x<img src=a> yard.larder"));
    settings::noteRecentBook(book);
    emit window.books()->recentChanged();
    EXPECT_EQ(tipsOfMenus(), before + 1);
    settings::forgetRecentBook(book);
}

TEST_F(ForeignWords, AreNoMarkupInAnyForm) {
    for (const auto& [name, open] : invented::everyForm(window, entry().id)) {
        SCOPED_TRACE(name);
        auto* form = open();
        walk.through(*form);
        form->save(); // what is wrong is said below
        settle();
        for (auto* each : window.findChildren<EntryForm*>()) walk.through(*each);
        for (auto* each : window.findChildren<EntryForm*>()) delete each;
    }
}

TEST_F(ForeignWords, AreNoMarkupInWhatIsReadFromFiles) {
    auto* import = new ImportDialog(
        window.book(),
        table(
            QStringLiteral("colony,date,gross_kg\n%1,2026-09-13,%1\n").arg(QString(hostile).remove(QLatin1Char('"')))),
        &window);
    look(import);
    look(new WeatherDialog(window.yard(),
                           table(QStringLiteral("date,mean\n%1,warm\n").arg(QString(hostile).remove(QLatin1Char('"')))),
                           &window));
    look(new ScaleLogDialog(
        window.yard(), entry().id,
        table(QStringLiteral("<img src=x>,weight kg\n2026-09-01 10:00,30\n2026-09-02 10:00,30.1\n%1,a\n")
                  .arg(QString(hostile).remove(QLatin1Char('"')))),
        &window));
    window.books()->open(table(hostile));
    settle();
    window.banner()->showBriefly(hostile);
    window.banner()->showMessage(QStringLiteral("problems"), hostile);
    walk.through(window);
    EXPECT_GT(walk.labels, 2);
}

} // namespace winterlarder::desk
