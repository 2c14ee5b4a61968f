#include "ui/floor/report_strip.h"

#include "ui/common/action_button.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/report_words.h"
#include "ui/floor/report_field.h"

#include <QApplication>
#include <QHideEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

constexpr int kSide = 16;
constexpr int kAbove = 6;
constexpr int kCellGap = 10;
constexpr int kLabelGap = 5;

}  // namespace

ReportStrip::ReportStrip(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_button(new common::ActionButton(look, QString(), this)), m_line(new QWidget(this)), m_summary(new QLabel(this))
{
    setAccessibleName(tr("How the session felt"));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);  // the note grows with the page and does not hold it
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kSide, kAbove, kSide, kAbove);
    auto* folded = new QHBoxLayout;
    folded->setSpacing(kCellGap);
    folded->addWidget(m_button);
    folded->addWidget(m_summary, 1);
    column->addLayout(folded);
    m_summary->setProperty("role", QStringLiteral("caption"));
    m_summary->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    column->addWidget(m_line);
    new common::FlowLayout(kCellGap, kAbove, m_line);
    m_line->layout()->setContentsMargins(0, 0, 0, 0);
    m_button->setButtonSize(common::ButtonSize::Small);
    m_button->setKeyText(tr("Alt E"));
    const auto scale = static_cast<int>(ReportFieldKind::Scale);
    m_sleep = addField(scale, tr("Sleep"), tr("Sleep, 1 bad to 5 good"));
    m_soreness = addField(scale, tr("Soreness"), tr("Soreness, 1 none to 5 much"));
    m_stress = addField(scale, tr("Stress"), tr("Stress, 1 none to 5 much"));
    m_effort = addField(static_cast<int>(ReportFieldKind::Effort), tr("Effort"), tr("Effort of the whole session, 10 is all there was"));
    m_minutes = addField(static_cast<int>(ReportFieldKind::Minutes), tr("Minutes"), tr("Minutes of the session"));
    m_note = addField(static_cast<int>(ReportFieldKind::Note), tr("Note"), tr("Note of the session"));
    m_fault = new QLabel(m_line);
    m_fault->setProperty("role", QStringLiteral("caption"));
    m_fault->hide();
    m_line->layout()->addWidget(m_fault);
    connect(m_button, &QPushButton::clicked, this, &ReportStrip::takeFocus);
    connect(&look, &common::Look::changed, this, &ReportStrip::fold);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget* /*old*/, QWidget* now) {
        if (m_isOpen && now != nullptr && !hasField(now)) {
            m_isOpen = false;
            fold();
        }
    });
}

ReportStrip::~ReportStrip()
{
    // A field that goes away with the focus in it says that it was left, and the program that the focus moved: nobody is there to hear it any more.
    qApp->disconnect(this);
    for (const Cell& cell : m_cells) {
        cell.field->disconnect(this);
    }
}

ReportField* ReportStrip::addField(int kind, const QString& label, const QString& spoken)
{
    auto* cell = new QWidget(m_line);
    auto* row = new QHBoxLayout(cell);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kLabelGap);
    auto* caption = new QLabel(label, cell);
    caption->setProperty("role", QStringLiteral("caption"));
    auto* field = new ReportField(m_look, static_cast<ReportFieldKind>(kind), spoken, cell);
    field->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    row->addWidget(caption);
    row->addWidget(field);
    m_line->layout()->addWidget(cell);
    m_cells.push_back({cell, caption, field});
    connect(field, &ReportField::given, this, &ReportStrip::say);
    connect(field, &ReportField::left, this, &ReportStrip::left);
    return field;
}

bool ReportStrip::hasField(const QWidget* widget) const
{
    return m_line->isAncestorOf(widget);
}

sessions::SessionReport ReportStrip::typed() const
{
    sessions::SessionReport report{m_report.sleep, m_report.soreness, m_report.stress, m_effort->number(), m_minutes->number(), m_note->words().toStdString()};
    if (m_isHealthKept) {
        report.sleep = m_sleep->number();
        report.soreness = m_soreness->number();
        report.stress = m_stress->number();
    }
    return report;
}

QString ReportStrip::faultText() const
{
    return m_fault->isHidden() ? QString() : m_fault->text();
}

void ReportStrip::say()
{
    QString fault;
    for (const Cell& cell : m_cells) {
        const bool isSound = cell.field->isSound();
        cell.field->setFaulty(!isSound);
        if (!isSound) {
            fault = tr("“%1” is not kept. %2: %3.").arg(cell.field->text(), cell.caption->text(), cell.field->rangeText());
        }
    }
    m_fault->setText(fault);
    m_fault->setVisible(!fault.isEmpty());
    const sessions::SessionReport report = typed();
    if (report != m_report && !m_session.isNone()) {
        m_report = report;
        load();
        Q_EMIT told(m_session, report);
    }
}

void ReportStrip::load()
{
    m_sleep->showNumber(m_report.sleep);
    m_soreness->showNumber(m_report.soreness);
    m_stress->showNumber(m_report.stress);
    m_effort->showNumber(m_report.effortTenths);
    m_minutes->showNumber(m_report.minutes);
    m_note->showWords(common::qstring(m_report.note));
}

void ReportStrip::setReport(base::SessionId session, const sessions::SessionReport& report, bool isHealthKept)
{
    const sessions::SessionReport pending = typed();
    const base::SessionId before = m_session;
    const bool isPending = session != before && !before.isNone() && pending != m_report;
    m_session = session;
    m_report = report;
    m_isHealthKept = isHealthKept;
    for (ReportField* field : {m_sleep, m_soreness, m_stress}) {
        field->parentWidget()->setVisible(isHealthKept);
    }
    load();
    if (session != before) {
        for (const Cell& cell : m_cells) {
            cell.field->reset();
            cell.field->setFaulty(false);
        }
        m_fault->hide();
    }
    fold();
    if (isPending) {
        Q_EMIT told(before, pending);
    }
}

int ReportStrip::lineWidth() const
{
    int width = 2 * kSide - kCellGap;
    for (const Cell& cell : m_cells) {
        width += cell.box->isHidden() ? 0 : cell.caption->sizeHint().width() + kLabelGap + cell.field->minimumSizeHint().width() + kCellGap;
    }
    return width;
}

void ReportStrip::stretchNote()
{
    const int spare = width() - lineWidth();
    const int alone = width() - 2 * kSide - m_cells.back().caption->sizeHint().width() - kLabelGap;
    m_note->stretchTo(spare >= 0 ? m_note->minimumSizeHint().width() + spare : alone);
}

void ReportStrip::showSummary()
{
    const int room = width() - 2 * kSide - m_button->sizeHint().width() - kCellGap;
    m_summary->setText(m_summary->fontMetrics().elidedText(common::reportText(m_report), Qt::ElideRight, std::max(0, room)));
}

bool ReportStrip::isFolded() const
{
    return (m_isTight || width() < lineWidth()) && !m_isOpen;
}

void ReportStrip::fold()
{
    const bool isFolded = this->isFolded();
    const QString said = common::reportText(m_report);
    m_button->setText(tr("How it felt"));
    m_button->setToolTip(said.isEmpty() ? tr("Sleep, soreness, stress, effort, minutes and a note: all may be left out") : said);
    m_button->setAccessibleName(tr("How the session felt, Alt+E"));
    m_button->setAccessibleDescription(said);
    stretchNote();
    showSummary();
    m_summary->setVisible(isFolded);
    m_button->setVisible(isFolded);
    m_line->setVisible(!isFolded);
}

void ReportStrip::setTight(bool isTight)
{
    m_isTight = isTight;
    fold();
}

void ReportStrip::takeFocus()
{
    m_isOpen = true;
    fold();
    (m_isHealthKept ? m_sleep : m_effort)->setFocus(Qt::ShortcutFocusReason);
}

void ReportStrip::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fold();
}

void ReportStrip::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (!event->spontaneous()) {
        say();
    }
}

}  // namespace chalk::ui::floor
