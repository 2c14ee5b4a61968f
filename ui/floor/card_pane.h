#pragma once

#include "ui/common/panel.h"
#include "ui/floor/floor_case.h"

namespace chalk::sessions {
struct CardContent;
}

namespace chalk::ui::common {
class ActionButton;
}

namespace chalk::ui::print {
class CardPreview;
}

namespace chalk::ui::floor {

/// How a lift is set up for its load: on a bar the plates of one side are drawn, all else is said.
class SetUpView : public QWidget {
    Q_OBJECT

public:
    explicit SetUpView(const common::Look& look, QWidget* parent = nullptr);

    /// For this load of the lift, at this place.
    void setLift(const FloorLift& lift, base::Load load, const QString& place);
    void clear();
    [[nodiscard]] const QString& caption() const { return m_caption; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    QString m_caption;
    QString m_words;  ///< below the caption where no plates are drawn
    std::optional<std::vector<base::Load>> m_plates;
    base::MassUnit m_unit = base::MassUnit::Kilogram;
};

/// The right side of the floor page: the client's card as it is printed, and the set-up of the lift.
class CardPane : public common::Panel {
    Q_OBJECT

public:
    explicit CardPane(const common::Look& look, QWidget* parent = nullptr);

    void setCard(const sessions::CardContent& card);
    /// Says why there is no card.
    void clearCard(const QString& why);
    [[nodiscard]] SetUpView& setUp() { return *m_setUp; }
    [[nodiscard]] bool hasCard() const { return m_hasCard; }

Q_SIGNALS:
    void printAsked();

private:
    print::CardPreview* m_preview;
    QLabel* m_why;
    QWidget* m_paper;
    SetUpView* m_setUp;
    common::ActionButton* m_print;
    bool m_hasCard = false;
};

}  // namespace chalk::ui::floor
