#include "ui/print/card_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/print/card_printing.h"
#include "ui/print/sheet_preview.h"
#include "ui/print/sheet_printing.h"

#include <QCheckBox>
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
constexpr int kReportSegment = 4;  ///< behind those of SheetLayout

PaperFamily familyOfLocale()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? PaperFamily::NorthAmerican : PaperFamily::Iso;
}

base::Date dateOf(const QDate& day)
{
    return base::Date::fromDays(static_cast<std::int32_t>(QDate(1970, 1, 1).daysTo(day)));
}

}  // namespace

std::function<bool(QPrinter&, QWidget*)> CardDialogServices::standardPrinterChoice()
{
    return [](QPrinter& printer, QWidget* parent) { return QPrintDialog(&printer, parent).exec() == QDialog::Accepted; };
}

CardDialog::CardDialog(const CardDialogServices& services, std::vector<sessions::CardContent> cards, const QDate& day, const QStringList& withheld,
                       QWidget* parent)
    : QDialog(parent), m_services(services), m_cards(std::move(cards)), m_day(day), m_withheld(withheld)
{
    m_request.family = familyOfLocale();
    m_request.asOf = dateOf(day);
    setWindowTitle(tr("Cards"));
    resize(kDialogWidth, kDialogHeight);
    build();
    layOut();
    sayWhoGetsNone();
}

void CardDialog::sayWhoGetsNone()
{
    if (!m_withheld.isEmpty()) {
        say(common::Signal::Pain, QStringLiteral("clearance"), tr("No card for %1.").arg(m_withheld.join(QStringLiteral(", "))),
            tr("Clearance is not on file."));
    } else if (m_cards.empty()) {
        say(common::Signal::Info, QStringLiteral("info"), tr("There is no card to make."), tr("Nobody with lifts is booked."));
    } else {
        m_banner->hide();
    }
}

void CardDialog::build()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 20, 20, 20);
    row->setSpacing(20);
    m_preview = new SheetPreview(this);
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

common::ActionButton* CardDialog::button(const QString& text, const QString& icon, const QString& keys, const std::function<void()>& does)
{
    auto* made = new common::ActionButton(m_services.look, text, this);
    made->setIconName(icon);
    made->setKeyText(keys);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, does);
    return made;
}

void CardDialog::buildTools(QVBoxLayout& column)
{
    m_title = new QLabel(this);
    m_title->setProperty("role", QStringLiteral("section"));
    m_title->setWordWrap(true);
    m_where = new QLabel(this);
    m_where->setProperty("role", QStringLiteral("secondary"));
    m_before = button(tr("Before"), QStringLiteral("left"), {}, [this] { showSheet(m_sheet - 1); });
    m_after = button(tr("Next"), QStringLiteral("right"), {}, [this] { showSheet(m_sheet + 1); });
    auto* steps = new QHBoxLayout;
    steps->addWidget(m_before);
    steps->addWidget(m_after);
    steps->addStretch(1);
    m_banner = new common::Banner(m_services.look, this);
    m_banner->hide();
    m_print = button(tr("Print…"), QStringLiteral("print"), tr("Ctrl P"), [this] { print(); });
    m_print->setKind(common::ButtonKind::Primary);
    m_print->setDefault(true);
    m_save = button(tr("Save as PDF…"), {}, tr("Ctrl S"), [this] { save(); });
    column.addWidget(m_title);
    column.addWidget(m_where);
    column.addLayout(steps);
    buildChoices(column);
    column.addWidget(m_banner);
    column.addStretch(1);
    column.addWidget(m_print);
    column.addWidget(m_save);
    column.addWidget(button(tr("Close"), {}, tr("Esc"), [this] { reject(); }));
    addKeys();
    m_print->setFocus();
}

void CardDialog::buildChoices(QVBoxLayout& column)
{
    m_layouts = new common::SegmentedChoice(tr("Layout"), {{tr("Card")}, {tr("Four")}, {tr("Group")}, {tr("Week")}, {tr("Report")}}, this);
    m_days = new common::SegmentedChoice(tr("Days"), {{tr("This day")}, {tr("Whole week")}}, this);
    m_papers = new common::SegmentedChoice(tr("Paper"), {{tr("A4, A5")}, {tr("Letter, half")}}, this);
    m_initials = new QCheckBox(tr("Initials only"), this);
    m_initials->setToolTip(tr("Clients’ names as initials, for paper that lies open"));
    m_days->hide();
    m_layouts->setAvailable(static_cast<int>(SheetLayout::Group), m_cards.size() > 1);
    m_layouts->setAvailable(kReportSegment, false);
    m_layouts->setChosen(0);
    m_days->setChosen(0);
    m_papers->setChosen(static_cast<int>(m_request.family));
    connect(m_layouts, &common::SegmentedChoice::choiceMade, this, [this](int choice) {
        choice == kReportSegment ? showReport() : setLayoutOfSheets(static_cast<SheetLayout>(choice));
    });
    connect(m_days, &common::SegmentedChoice::choiceMade, this, [this](int choice) { setWholeWeek(choice == 1); });
    connect(m_papers, &common::SegmentedChoice::choiceMade, this, [this](int choice) { setFamily(static_cast<PaperFamily>(choice)); });
    connect(m_initials, &QCheckBox::toggled, this, &CardDialog::setInitialsOnly);
    for (common::SegmentedChoice* choice : {m_layouts, m_days, m_papers}) {
        choice->setCompact();
        column.addWidget(choice);
    }
    column.addWidget(m_initials);
}

void CardDialog::addKeys()
{
    const auto key = [this](const QKeySequence& keys, auto does) { connect(new QShortcut(keys, this), &QShortcut::activated, this, does); };
    key(QKeySequence::Print, [this] { print(); });
    key(QKeySequence::Save, [this] { save(); });
    key(Qt::Key_PageUp, [this] { showSheet(m_sheet - 1); });
    key(Qt::Key_PageDown, [this] { showSheet(m_sheet + 1); });
}

void CardDialog::offerWeek(base::Date today, std::function<std::vector<sessions::CardContent>()> week)
{
    m_request.asOf = today;
    m_readWeek = std::move(week);
    m_days->setVisible(m_readWeek != nullptr && m_request.layout != SheetLayout::Week);
}

void CardDialog::offerReport(const QString& clientName, ReportSheets report)
{
    m_reportOf = clientName;
    m_makeReport = std::move(report);
    m_layouts->setAvailable(kReportSegment, m_makeReport != nullptr);
}

void CardDialog::showReport()
{
    if (!m_makeReport) {
        return;
    }
    m_isReport = true;
    setWindowTitle(tr("Progress report"));
    m_layouts->setChosen(kReportSegment);
    m_days->hide();
    m_banner->hide();
    layOut();
    if (m_sheets.empty() && m_banner->isHidden()) {
        say(common::Signal::Info, QStringLiteral("info"), tr("There is nothing to report yet."), tr("Nothing is on record of the last weeks."));
    }
}

bool CardDialog::isWholeWeek() const
{
    return !m_isReport && m_readWeek != nullptr && (m_isWeekWanted || m_request.layout == SheetLayout::Week);
}

const std::vector<sessions::CardContent>& CardDialog::shown()
{
    if (!isWholeWeek()) {
        return m_cards;
    }
    if (!m_week) {
        m_week = m_readWeek();
    }
    return *m_week;
}

void CardDialog::layOut()
{
    m_sheets = m_isReport ? m_makeReport(paper(), m_request.hasInitialsOnly) : sheetsOf(shown(), m_request);
    showSheet(m_sheet);
}

void CardDialog::setStations(const planning::FloorStations& stations)
{
    m_request.stations = stations;
    layOut();
}

void CardDialog::setFamily(PaperFamily family)
{
    m_request.family = family;
    m_papers->setChosen(static_cast<int>(family));
    layOut();
}

void CardDialog::setLayoutOfSheets(SheetLayout layout)
{
    m_request.layout = layout;
    if (m_isReport) {
        m_isReport = false;
        setWindowTitle(tr("Cards"));
        sayWhoGetsNone();
    }
    m_layouts->setChosen(static_cast<int>(layout));
    m_days->setVisible(m_readWeek != nullptr && layout != SheetLayout::Week);
    layOut();
}

void CardDialog::setWholeWeek(bool isWhole)
{
    m_isWeekWanted = isWhole;
    m_days->setChosen(isWhole ? 1 : 0);
    layOut();
}

void CardDialog::setInitialsOnly(bool isOnly)
{
    m_request.hasInitialsOnly = isOnly;
    m_initials->setChecked(isOnly);
    layOut();
}

QString CardDialog::titleOfSheet()
{
    if (m_isReport) {
        return tr("Progress report");
    }
    switch (m_request.layout) {
    case SheetLayout::Card: {
        int first = 0;
        for (const sessions::CardContent& card : shown()) {
            first += print::sheetCount(card, paper());
            if (m_sheet < first) {
                return common::qstring(card.clientName);
            }
        }
        return {};
    }
    case SheetLayout::FourCards:
        return tr("Four cards to a sheet");
    case SheetLayout::Group:
        return tr("Group sheet");
    case SheetLayout::Week:
        return tr("A client’s week");
    }
    return {};
}

void CardDialog::showSheet(int sheet)
{
    const int count = sheetCount();
    m_sheet = std::clamp(sheet, 0, std::max(0, count - 1));
    m_preview->setSheet(count == 0 ? Sheet() : m_sheets[static_cast<std::size_t>(m_sheet)]);
    m_title->setText(count == 0 ? QString() : titleOfSheet());
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

QString CardDialog::suggestedName()
{
    const QString day = m_day.toString(Qt::ISODate);
    if (m_isReport) {
        return m_request.hasInitialsOnly ? tr("report-%1.pdf").arg(day) : tr("report-%1-%2.pdf").arg(fileWord(m_reportOf), day);
    }
    const QString when = isWholeWeek() ? common::qstring(base::toString(dateOf(m_day).isoWeek())) : day;
    switch (m_request.layout) {
    case SheetLayout::Card:
    case SheetLayout::FourCards:
        break;
    case SheetLayout::Group:
        return tr("groups-%1.pdf").arg(when);
    case SheetLayout::Week:
        return tr("weeks-%1.pdf").arg(when);
    }
    if (m_cards.size() != 1 || isWholeWeek() || m_request.hasInitialsOnly) {
        return tr("cards-%1.pdf").arg(when);
    }
    return tr("card-%1-%2.pdf").arg(fileWord(common::qstring(m_cards.front().clientName)), day);
}

QString CardDialog::fileWord(QString name)
{
    name = name.toLower();
    // A name may hold what no file may.
    std::replace_if(name.begin(), name.end(), [](QChar letter) { return !letter.isLetterOrNumber(); }, QLatin1Char('-'));
    return name;
}

void CardDialog::print()
{
    if (m_sheets.empty()) {
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    if (!m_services.choosePrinter(printer, this)) {
        return;
    }
    if (!printSheets(printer, m_sheets, paper())) {
        const QString name = printer.outputFileName().isEmpty() ? printer.printerName() : QDir::toNativeSeparators(printer.outputFileName());
        say(common::Signal::Warn, QStringLiteral("print"), m_isReport ? tr("The printer did not take the report.") : tr("The printer did not take the cards."),
            tr("%1 is not ready or cannot be written. Nothing is lost: try again, or save as PDF.").arg(name));
        return;
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Sent to the printer."), tr("%n sheet(s).", nullptr, sheetCount()));
    tellCardsMade();
}

void CardDialog::tellCardsMade()
{
    if (!m_isReport) {
        Q_EMIT cardsMade();
    }
}

void CardDialog::save()
{
    if (m_sheets.empty()) {
        return;
    }
    const auto file = m_services.dialogs.fileToSave(
        this, {m_isReport ? tr("Save the report as PDF") : tr("Save the cards as PDF"), {}, suggestedName(), tr("PDF (*.pdf)"), QStringLiteral("pdf")});
    if (!file) {
        return;
    }
    const QString shown = QDir::toNativeSeparators(*file);
    if (const auto fault = savePdf(*file, sheetsPdf(m_sheets, paper(), m_isReport ? tr("Progress report") : tr("Session cards"), m_day))) {
        say(common::Signal::Warn, QStringLiteral("warning"), tr("Not saved."), tr("%1: %2. Nothing is lost: choose another place.").arg(shown, *fault));
        return;
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Saved."), shown);
    tellCardsMade();
}

}  // namespace chalk::ui::print
