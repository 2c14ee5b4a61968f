#include "core/exchange/trends_csv.h"
#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/whole_file.h"
#include "ui/trends/trend_cards.h"
#include "ui/trends/trends_page.h"

#include <QMenu>

// What leaves the page: the report, the numbers as a file, the charts as pictures.

namespace chalk::ui::trends {

bool TrendsPage::canPrint() const
{
    return openClient().has_value();
}

void TrendsPage::print()
{
    if (const auto client = openClient()) {
        Q_EMIT reportAsked(client->id);
    }
}

void TrendsPage::offerExports()
{
    if (m_presenter.view() == nullptr) {
        return;
    }
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(tr("All &numbers (CSV) …"), this, &TrendsPage::saveNumbers);
    const std::vector<NamedChart> charts = m_cards->charts();
    for (std::size_t i = 0; i < charts.size(); ++i) {
        menu->addSeparator();
        menu->addAction(tr("%1 as PNG …").arg(charts[i].name), this, [this, i] { saveChart(i, false); });
        menu->addAction(tr("%1 as SVG …").arg(charts[i].name), this, [this, i] { saveChart(i, true); });
    }
    menu->popup(m_export->mapToGlobal(QPoint(0, m_export->height())));
}

QString TrendsPage::fileNameFor(const QString& what) const
{
    const store::ClientTrends* client = m_presenter.view()->client();
    QString name;
    for (const QChar letter : client == nullptr ? tr("everybody") : common::qstring(client->name).toLower()) {
        name += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    return QStringLiteral("%1-%2-%3").arg(name, what, common::qstring(base::toString(m_presenter.view()->ask.day.isoWeek())));
}

void TrendsPage::saveNumbers()
{
    const TrendsView& view = *m_presenter.view();
    const QByteArray csv = view.client() != nullptr ? exchange::trendsCsvOf(view.client()->trends, view.client()->name, view.client()->unit)
                                                    : exchange::trendsCsvOf(*view.studio());
    saveAs(fileNameFor(QStringLiteral("trends")), tr("Table (*.csv)"), QStringLiteral("csv"), csv);
}

void TrendsPage::saveChart(std::size_t chart, bool isSvg)
{
    const std::vector<NamedChart> charts = m_cards->charts();
    if (chart < charts.size()) {
        const common::Theme& theme = m_services.look.theme();
        saveAs(fileNameFor(charts[chart].fileName), isSvg ? tr("Drawing (*.svg)") : tr("Picture (*.png)"), isSvg ? QStringLiteral("svg") : QStringLiteral("png"),
               isSvg ? svgOf(charts[chart], theme) : pngOf(charts[chart], theme));
    }
}

void TrendsPage::saveAs(const QString& name, const QString& filter, const QString& suffix, const QByteArray& content)
{
    const auto file = m_services.dialogs.fileToSave(window(), {tr("Export"), {}, name + QLatin1Char('.') + suffix, filter, suffix});
    if (!file) {
        return;
    }
    const auto fault = common::writeWhole(*file, content);
    if (fault) {
        sayNews(tr("Not saved."), tr("%1 could not be written: %2").arg(*file, *fault), true);
    } else {
        sayNews(tr("Saved."), *file, false);
    }
}

}  // namespace chalk::ui::trends
