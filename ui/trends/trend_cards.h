#pragma once

#include "ui/trends/chart_export.h"
#include "ui/trends/trends_source.h"
#include "ui/trends/volume_chart.h"

#include <QWidget>

#include <array>

class QHBoxLayout;
class QLabel;

namespace chalk::ui::common {
class Look;
class Panel;
}

namespace chalk::ui::trends {

/// The charts of a client or of everybody: the weeks above, three smaller ones below.
class TrendCards : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the cards.
    explicit TrendCards(const common::Look& look, QWidget* parent = nullptr);

    /// Selects the last finished week.
    void setView(const TrendsView& view);
    /// -1 before the first view.
    [[nodiscard]] int selectedWeek() const { return m_scene.selected; }
    /// Leaves it where there is no such week.
    void selectWeek(int week);
    void setNarrow(bool isNarrow);
    /// The charts that are there, without those that still wait for numbers.
    [[nodiscard]] std::vector<NamedChart> charts() const;
    /// What takes the keys.
    [[nodiscard]] std::vector<ChartView*> views() const;

private:
    struct Card {
        common::Panel* panel = nullptr;
        ChartView* view = nullptr;
        QString fileName;  ///< empty where there is nothing to save yet
        QString name;
        QString title;
    };
    /// What a card shows: its picture, or the ghost of it where `fileName` is empty.
    struct CardContent {
        QString title;
        QString unit;      ///< small beside the title
        QString fileName;
        ChartPaint paint;
        QString spoken;
    };

    void buildVolume();
    void buildSmall();
    Card makeCard(QHBoxLayout* row, int stretch);
    static void setCard(Card& card, const CardContent& content);
    void showVolume();
    void showClient();
    void showStudio();
    [[nodiscard]] CardContent volumeContent() const;
    [[nodiscard]] QString weekNote() const;
    void dress();

    const common::Look& m_look;
    TrendsView m_view;
    VolumeScene m_scene;
    Card m_volume;
    ChartView* m_values = nullptr;
    QWidget* m_line = nullptr;
    std::array<Card, 3> m_small;
    QLabel* m_note = nullptr;
    bool m_isNarrow = false;
};

}  // namespace chalk::ui::trends
