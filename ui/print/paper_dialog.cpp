#include "ui/print/paper_dialog.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/print/sheet_preview.h"
#include "ui/print/sheet_printing.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPrinter>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr int kPaperDialogWidth = 820;
constexpr int kPaperDialogHeight = 720;
constexpr int kPaperToolsWidth = 268;

}  // namespace

PaperDialog::PaperDialog(const CardDialogServices& services, const QString& title, const QString& name, SheetsFor sheets, const QDate& day, QWidget* parent)
    : QDialog(parent), m_services(services), m_title(title), m_name(name), m_make(std::move(sheets)), m_day(day)
{
    setWindowTitle(title);
    resize(kPaperDialogWidth, kPaperDialogHeight);
    build();
    setPaper(QLocale().measurementSystem() == QLocale::ImperialUSSystem ? PaperSize::Letter : PaperSize::A4);
}

void PaperDialog::build()
{
    const auto button = [this](const QString& text, const QString& icon, const QString& keys, auto does) {
        auto* made = new common::ActionButton(m_services.look, text, this);
        made->setIconName(icon);
        made->setKeyText(keys);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, does);
        return made;
    };
    m_preview = new SheetPreview(this);
    auto* desk = new QWidget(this);
    desk->setProperty("ground", QStringLiteral("sunken"));
    auto* around = new QVBoxLayout(desk);
    around->setContentsMargins(16, 16, 16, 16);
    around->addWidget(m_preview);
    auto* tools = new QWidget(this);
    tools->setFixedWidth(qRound(m_services.look.theme().scaled(kPaperToolsWidth)));
    auto* column = new QVBoxLayout(tools);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    auto* heading = new QLabel(m_title, tools);
    heading->setProperty("role", QStringLiteral("section"));
    heading->setWordWrap(true);
    m_where = new QLabel(tools);
    m_where->setProperty("role", QStringLiteral("secondary"));
    auto* steps = new QHBoxLayout;
    m_before = button(tr("Before"), QStringLiteral("left"), {}, [this] { showPage(m_page - 1); });
    m_next = button(tr("Next"), QStringLiteral("right"), {}, [this] { showPage(m_page + 1); });
    steps->addWidget(m_before);
    steps->addWidget(m_next);
    steps->addStretch(1);
    m_papers = new common::SegmentedChoice(tr("Paper"), {{tr("A4")}, {tr("Letter")}}, tools);
    connect(m_papers, &common::SegmentedChoice::choiceMade, this, [this](int index) { setPaper(index == 0 ? PaperSize::A4 : PaperSize::Letter); });
    m_banner = new common::Banner(m_services.look, tools);
    m_banner->hide();
    auto* printButton = button(tr("Print…"), QStringLiteral("print"), tr("Ctrl P"), [this] { print(); });
    printButton->setKind(common::ButtonKind::Primary);
    printButton->setDefault(true);
    column->addWidget(heading);
    column->addWidget(m_where);
    column->addLayout(steps);
    column->addWidget(m_papers);
    column->addWidget(m_banner);
    column->addStretch(1);
    column->addWidget(printButton);
    column->addWidget(button(tr("Save as PDF…"), {}, tr("Ctrl S"), [this] { save(); }));
    column->addWidget(button(tr("Close"), {}, tr("Esc"), [this] { reject(); }));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 20, 20, 20);
    row->setSpacing(20);
    row->addWidget(desk, 1);
    row->addWidget(tools);
    const auto key = [this](const QKeySequence& keys, auto does) { connect(new QShortcut(keys, this), &QShortcut::activated, this, does); };
    key(QKeySequence::Print, [this] { print(); });
    key(QKeySequence::Save, [this] { save(); });
    key(Qt::Key_PageUp, [this] { showPage(m_page - 1); });
    key(Qt::Key_PageDown, [this] { showPage(m_page + 1); });
    printButton->setFocus();
}

void PaperDialog::setPaper(PaperSize paper)
{
    m_paper = paper;
    m_papers->setChosen(paper == PaperSize::Letter ? 1 : 0);
    m_sheets = m_make(paper);
    showPage(m_page);
}

void PaperDialog::showPage(int page)
{
    m_page = std::clamp(page, 0, std::max(0, pageCount() - 1));
    m_before->setEnabled(m_page > 0);
    m_next->setEnabled(m_page + 1 < pageCount());
    if (!m_sheets.empty()) {
        m_preview->setSheet(m_sheets[static_cast<std::size_t>(m_page)]);
    }
    m_where->setText(tr("Page %1 of %2").arg(m_page + 1).arg(pageCount()));
}

void PaperDialog::say(common::Signal signal, const QString& icon, const QString& lead, const QString& text)
{
    m_banner->setMessage({signal, icon, lead, text});
    m_banner->show();
}

QString PaperDialog::saying() const
{
    return m_banner->isHidden() ? QString() : m_banner->accessibleName();
}

void PaperDialog::print()
{
    QPrinter printer(QPrinter::HighResolution);
    if (!m_services.choosePrinter(printer, this)) {
        return;
    }
    if (!printSheets(printer, m_sheets, m_paper)) {
        return say(common::Signal::Warn, QStringLiteral("print"), tr("The printer did not take it."), tr("Nothing is lost: try again, or save it as PDF."));
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Sent to the printer."), {});
    Q_EMIT paperMade();
}

void PaperDialog::save()
{
    const auto file = m_services.dialogs.fileToSave(this, {tr("Save as PDF"), {}, m_name + QStringLiteral(".pdf"), tr("PDF (*.pdf)"), QStringLiteral("pdf")});
    if (!file) {
        return;
    }
    const QString shown = QDir::toNativeSeparators(*file);
    if (const auto fault = savePdf(*file, sheetsPdf(m_sheets, m_paper, m_title, m_day))) {
        return say(common::Signal::Warn, QStringLiteral("warning"), tr("Not saved."), tr("%1: %2. Nothing is lost: choose another place.").arg(shown, *fault));
    }
    say(common::Signal::Ok, QStringLiteral("check"), tr("Saved."), shown);
    Q_EMIT paperMade();
}

}  // namespace chalk::ui::print
