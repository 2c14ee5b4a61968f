#include "ui/direction/months_view.h"

#include "ui/common/formats.h"
#include "ui/common/loading_rows.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/direction/plan_table.h"

#include <QLabel>
#include <QPromise>
#include <QScrollArea>
#include <QThreadPool>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

constexpr int kMonthRows = 12;

QString stallHtml(const StalledMonth& stall)
{
    QStringList parts{QStringLiteral("<b>%1.</b> %2.").arg(common::qstring(stall.name).toHtmlEscaped(), stall.words.title.toHtmlEscaped())};
    for (const QString& one : stall.words.first) {
        parts.append(one.toHtmlEscaped());
    }
    if (!stall.words.numbers.isEmpty()) {
        parts.append(stall.words.numbers.toHtmlEscaped());
    }
    return common::proseHtml(parts.join(QLatin1Char(' ')));
}

QString wordsOf(const MonthsCase& months)
{
    QString html = common::proseHtml(QStringLiteral("<b>%1</b> %2").arg(MonthsView::tr("Attendance."), monthAttendanceText(months.report).toHtmlEscaped()));
    if (!months.screenThen) {
        html += common::proseHtml(MonthsView::tr("No movement screen is on file."));
    }
    if (months.stalls.empty()) {
        html += common::proseHtml(MonthsView::tr("<b>Stalls.</b> No lift is without a new best for long."));
    }
    for (const StalledMonth& stall : months.stalls) {
        html += stallHtml(stall);
    }
    return html;
}

}  // namespace

MonthsView::MonthsView(const common::Look& look, store::Access access, const lifts::Catalogue& catalogue, QWidget* parent)
    : common::Panel(look, parent),
      m_access(std::move(access)),
      m_catalogue(catalogue),
      m_loading(new common::LoadingRows(look, this)),
      m_contents(new QWidget),
      m_lifts(new PlanTable(look, tr("Lifts then and now"), kMonthRows)),
      m_screens(new PlanTable(look, tr("Movement screens then and now"), kMonthRows)),
      m_words(new QLabel)
{
    setTitle(tr("The months so far"));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::RichText);
    m_words->setContentsMargins(16, 8, 16, 12);
    auto* column = new QVBoxLayout(m_contents);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_lifts);
    column->addWidget(m_words);
    column->addWidget(m_screens);
    column->addStretch(1);
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    common::holdColumn(*area, m_contents);
    body()->addWidget(m_loading);
    body()->addWidget(area, 1);
    m_contents->hide();
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &MonthsView::take);
}

MonthsView::~MonthsView()
{
    m_watcher.waitForFinished();
}

void MonthsView::read(base::ClientId client, base::Date from, base::Date today)
{
    m_asked = Asked{client, from, today};
    setTitle(tr("The months so far"), tr("since %1").arg(common::shortDayText(from)));
    m_contents->hide();
    m_loading->begin();
    begin();
}

void MonthsView::begin()
{
    if (m_isReading || !m_asked) {
        return;
    }
    m_isReading = true;
    auto promise = std::make_shared<QPromise<Read>>();
    QThreadPool::globalInstance()->start([promise, asked = *std::exchange(m_asked, std::nullopt), access = m_access, &catalogue = m_catalogue] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<MonthsCase>>(readMonths(access, catalogue, asked.client, asked.from, asked.today)));
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
}

void MonthsView::take()
{
    m_isReading = false;
    if (m_asked) {
        return begin();
    }
    m_loading->end();
    const Read read = m_watcher.result();
    if (*read) {
        setMonths(**read);
    } else {
        m_lifts->hide();
        m_screens->hide();
        m_words->setText(common::proseHtml(tr("The months cannot be shown. %1").arg(read->error().message.toHtmlEscaped())));
        m_contents->show();
    }
    Q_EMIT shown();
}

void MonthsView::setMonths(const MonthsCase& months)
{
    const auto lifts = monthLiftRows(months.report);
    m_lifts->setContent({tr("Lift"), tr("Then"), tr("Now"), tr("Load")}, lifts);
    m_lifts->setVisible(!lifts.empty());
    const auto screens = monthScreenRows(months);
    m_screens->setContent({tr("Movement screen"), tr("Then"), tr("Now")}, screens);
    m_screens->setVisible(!screens.empty());
    m_words->setText(wordsOf(months));
    m_contents->show();
}

QString MonthsView::said() const
{
    return common::plainText(m_words->text());
}

}  // namespace chalk::ui::direction
