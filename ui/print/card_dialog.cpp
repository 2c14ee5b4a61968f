#include "ui/print/card_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/print/card_preview.h"
#include "ui/print/card_printing.h"
#include "ui/print/sheet_printing.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr int kDialogWidth = 760;
constexpr int kDialogHeight = 640;
constexpr int kToolsWidth = 268;

PaperSize paperOfLocale()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? PaperSize::HalfLetter : PaperSize::A5;
}

}  // namespace

std::function<bool(QPrinter&, QWidget*)> CardDialogServices::standardPrinterChoice()
{
    return [](QPrinter& printer, QWidget* parent) { return QPrintDialog(&printer, parent).exec() == QDialog::Accepted; };
}

CardDialog::CardDialog(const CardDialogServices& services, std::vector<sessions::CardContent> cards, const QDate& day, const QStringList& withheld,
                       QWidget* parent)
    : QDialog(parent), m_services(services), m_cards(std::move(cards)), m_day(day), m_withheld(withheld), m_paper(paperOfLocale())
{
    setWindowTitle(tr("Cards"));
    resize(kDialogWidth, kDialogHeight);
    build();
    setPaper(m_paper);
    if (!m_withheld.isEmpty()) {
        say(common::Signal::Pain, QStringLiteral("clearance"), tr("No card for %1.").arg(m_withheld.join(QStringLiteral(", "))),
            tr("Clearance is not on file."));
    } else if (m_cards.empty()) {
        say(common::Signal::Info, QStringLiteral("info"), tr("There is no card to make."), tr("Nobody with lifts is booked."));
    }
}

void CardDialog::build()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 20, 20, 20);
    row->setSpacing(20);
    m_preview = new CardPreview(this);
    m_preview->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    auto* desk = new QWidget(this);
    desk->setProperty("ground", QStringLiteral("sunken"));
    auto* around = new QVBoxLayout(desk);
    around->setContentsMargins(16, 16, 16, 16);
    around->addWidget(m_preview);
    row->addWidget(desk, 1);
    auto* tools = new QWidget(this);
    tools->setFixedWidth(qRound(m_services.look.theme().scaled(kToolsWidth)));
    auto* column = new QVBoxLayout(tools);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    buildTools(*column);
    row->addWidget(tools);
}

void CardDialog::buildTools(QVBoxLayout& column)
{
    const common::Look& look = m_services.look;
    const auto button = [&](const QString& text, const QString& icon, const QString& keys, auto does) {
        auto* made = new common::ActionButton(look, text, this);
        made->setIconName(icon);
        made->setKeyText(keys);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, does);
        return made;
    };
    m_title = new QLabel(this);
    m_title->setProperty("role", QStringLiteral("section"));
    m_title->setWordWrap(true);
    m_where = new QLabel(this);
    m_where->setProperty("role", QStringLiteral("secondary"));
    m_papers = new common::SegmentedChoice(tr("Paper"), {{tr("A5")}, {tr("Half Letter")}}, this);
    connect(m_papers, &common::SegmentedChoice::choiceMade, this, [this](int choice) { setPaper(static_cast<PaperSize>(choice)); });
    m_before = button(tr("Before"), QStringLiteral("left"), {}, [this] { showSheet(m_sheet - 1); });
    m_after = button(tr("Next"), QStringLiteral("right"), {}, [this] { showSheet(m_sheet + 1); });
    auto* steps = new QHBoxLayout;
    steps->addWidget(m_before);
    steps->addWidget(m_after);
    steps->addStretch(1);
    m_banner = new common::Banner(look, this);
    m_banner->hide();
    m_print = button(tr("Print…"), QStringLiteral("print"), tr("Ctrl P"), [this] { print(); });
    m_print->setKind(common::ButtonKind::Primary);
    m_print->setDefault(true);
    m_save = button(tr("Save as PDF…"), {}, tr("Ctrl S"), [this] { save(); });
    auto* close = button(tr("Close"), {}, tr("Esc"), [this] { reject(); });
    column.addWidget(m_title);
    column.addWidget(m_where);
    column.addLayout(steps);
    column.addWidget(m_papers);
    column.addWidget(m_banner);
    column.addStretch(1);
    column.addWidget(m_print);
    column.addWidget(m_save);
    column.addWidget(close);
    const auto key = [this](const QKeySequence& keys, auto does) { connect(new QShortcut(keys, this), &QShortcut::activated, this, does); };
    key(QKeySequence::Print, [this] { print(); });
    key(QKeySequence::Save, [this] { save(); });
    key(Qt::Key_PageUp, [this] { showSheet(m_sheet - 1); });
    key(Qt::Key_PageDown, [this] { showSheet(m_sheet + 1); });
    m_print->setFocus();
}

int CardDialog::sheetCount() const
{
    int count = 0;
    for (const sessions::CardContent& card : m_cards) {
        count += print::sheetCount(card, m_paper);
    }
    return count;
}

void CardDialog::setPaper(PaperSize paper)
{
    m_paper = paper;
    m_papers->setChosen(static_cast<int>(paper));
    m_preview->setPaper(paper);
    showSheet(m_sheet);
}

void CardDialog::showSheet(int sheet)
{
    const int count = sheetCount();
    m_sheet = std::clamp(sheet, 0, std::max(0, count - 1));
    int first = 0;
    for (const sessions::CardContent& card : m_cards) {
        const int sheets = print::sheetCount(card, m_paper);
        if (m_sheet < first + sheets) {
            m_preview->setCard(card);
            m_preview->setSheet(m_sheet - first);
            m_title->setText(common::qstring(card.clientName));
            break;
        }
        first += sheets;
    }
    m_where->setText(count == 0 ? QString() : tr("Sheet %1 of %2").arg(m_sheet + 1).arg(count));
    m_before->setEnabled(m_sheet > 0);
    m_after->setEnabled(m_sheet + 1 < count);
    m_print->setEnabled(count > 0);
    m_save->setEnabled(count > 0);
}

void CardDialog::say(common::Signal signal, const QString& icon, const QString& lead, const QString& text)
{
    m_banner->setMessage({signal, icon, lead, text});
    m_banner->show();
}

void CardDialog::sayFailure(const QString& message)
{
    say(common::Signal::Pain, QStringLiteral("warning"), tr("The studio’s file did not answer."), message);
}

QString CardDialog::saying() const
{
    return m_banner->isHidden() ? QString() : m_banner->accessibleName();
}

QString CardDialog::suggestedName() const
{
    const QString day = m_day.toString(Qt::ISODate);
    if (m_cards.size() != 1) {
        return tr("cards-%1.pdf").arg(day);
    }
    QString name = common::qstring(m_cards.front().clientName).toLower();
    // A name may hold what no file may.
    std::replace_if(name.begin(), name.end(), [](QChar letter) { return !letter.isLetterOrNumber(); }, QLatin1Char('-'));
    return tr("card-%1-%2.pdf").arg(name, day);
}

void CardDialog::print()
{
    if (m_cards.empty()) {
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    if (!m_services.choosePrinter(printer, this)) {
        return;
    }
    if (!printCards(printer, m_cards, m_paper)) {
        const QString name = printer.outputFileName().isEmpty() ? printer.printerName() : QDir::toNativeSeparators(printer.outputFileName());
        say(common::Signal::Warn, QStringLiteral("print"), tr("The printer did not take the cards."),
            tr("%1 is not ready or cannot be written. Nothing is lost: try again, or save them as PDF.").arg(name));
        return;
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Sent to the printer."), tr("%n sheet(s).", nullptr, sheetCount()));
    Q_EMIT cardsMade();
}

void CardDialog::save()
{
    if (m_cards.empty()) {
        return;
    }
    const auto file = m_services.dialogs.fileToSave(
        this, {tr("Save the cards as PDF"), {}, suggestedName(), tr("PDF (*.pdf)"), QStringLiteral("pdf")});
    if (!file) {
        return;
    }
    const QString shown = QDir::toNativeSeparators(*file);
    if (const auto fault = savePdf(*file, cardsPdf(m_cards, m_paper, m_day))) {
        say(common::Signal::Warn, QStringLiteral("warning"), tr("Not saved."), tr("%1: %2. Nothing is lost: choose another place.").arg(shown, *fault));
        return;
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Saved."), shown);
    Q_EMIT cardsMade();
}

}  // namespace chalk::ui::print
