#pragma once

#include "core/direction/direction_fit.h"
#include "ui/common/theme.h"

#include <QAbstractButton>

#include <array>
#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

/// A mark and what it says of a direction.
struct CardNote {
    QString icon;
    common::Signal signal = common::Signal::Ok;
    QString text;

    bool operator==(const CardNote&) const = default;
};

/// What the card of a direction shows.
struct DirectionCardView {
    QString name;
    QString key;        ///< that chooses it
    QString sentence;
    chalk::direction::Demands demands;
    std::vector<CardNote> notes;

    bool operator==(const DirectionCardView&) const = default;
};

/// The card of a direction, as it is held against a client's week.
[[nodiscard]] DirectionCardView cardViewOf(const chalk::direction::DirectionFit& fit, int sessionsAWeek);
/// All of it in a sentence, for screen readers.
[[nodiscard]] QString spokenOf(const DirectionCardView& view);

/// One of three cards of which one is chosen: name, what it is, what it asks as pips, what is to be said of it. As high as its words need.
class DirectionCard : public QAbstractButton {
    Q_OBJECT

public:
    /// `look` outlives the card.
    explicit DirectionCard(const common::Look& look, QWidget* parent = nullptr);

    void setView(const DirectionCardView& view);
    [[nodiscard]] const DirectionCardView& view() const { return m_view; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    DirectionCardView m_view;
};

/// The three cards beside each other.
class DirectionCards : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the cards.
    explicit DirectionCards(const common::Look& look, QWidget* parent = nullptr);

    void setFits(const std::array<chalk::direction::DirectionFit, 3>& fits, int sessionsAWeek);
    [[nodiscard]] chalk::direction::Direction chosen() const;
    /// Without telling.
    void setChosen(chalk::direction::Direction direction);
    [[nodiscard]] DirectionCard* card(chalk::direction::Direction direction) const { return m_cards[static_cast<std::size_t>(direction)]; }

Q_SIGNALS:
    /// The person chose another one.
    void choiceMade(chalk::direction::Direction direction);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// All as high as the one with the most words, and never less.
    void fitHeight();

    std::array<DirectionCard*, 3> m_cards{};
};

}  // namespace chalk::ui::direction
