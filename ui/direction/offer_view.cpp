#include "ui/direction/offer_view.h"

#include "ui/common/direction_words.h"
#include "ui/direction/main_lift_rows.h"

#include <QCoreApplication>

namespace chalk::ui::direction {

namespace {

struct OfferText {
    Q_DECLARE_TR_FUNCTIONS(DirectionOffer)
};

}  // namespace

PlanPanelView offerPanelView(const DirectionCase& client, const DirectionOffer& offer)
{
    PlanPanelView view;
    view.title = common::planTitle(offer.plan);
    view.note = common::planDaysText(offer.plan);
    view.chart = planChartScene(offer.plan, client.closures);
    view.heads = QStringList{OfferText::tr("Main lift"), OfferText::tr("Now"), OfferText::tr("Base"), OfferText::tr("Build"), OfferText::tr("Peak"),
                             OfferText::tr("Test week")};
    for (const MainLiftRow& row : mainLiftRows(client, offer.plan, offer.singles)) {
        QStringList cells{row.lift, row.now};
        for (const QString& phase : row.phases) {
            cells.append(phase);
        }
        view.rows.push_back(cells);
    }
    view.footnote = OfferText::tr("Percentages are planning figures from estimates, not tests. Results adjust the loads week by week.");
    return view;
}

DirectionSideView offerSideView(const DirectionCase& client, const DirectionOffer& offer)
{
    DirectionSideView view;
    view.title = OfferText::tr("What changes for %1").arg(firstNameOf(client.client));
    view.lines = changeLines(client, offer);
    const auto suggested = client.suggested();
    view.caption = suggested ? OfferText::tr("Why %1 is suggested").arg(common::directionName(*suggested).toLower()) : OfferText::tr("Why none is suggested");
    std::vector<chalk::direction::DirectionFit> fits;
    for (const DirectionOffer& one : client.offers) {
        fits.push_back(one.fit);
    }
    view.why = common::suggestionText(fits, client.facts);
    if (const auto bar = startBarOf(client, offer)) {
        view.bar = startBarText(client, *bar);
    }
    return view;
}

}  // namespace chalk::ui::direction
