#pragma once

#include <QAbstractButton>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::check_in {

/// What a choice row says.
struct ChoiceRowView {
    QString title;      ///< `Lighter week, then rebuild`
    QString text;       ///< what it leads to
    QString suggested;  ///< why it is suggested; empty where it is not
    QString key;        ///< `1`

    bool operator==(const ChoiceRowView&) const = default;
};

/// One thing that can be decided: a round mark, what it is, what it leads to, its key. Who owns the rows says which one is on.
class ChoiceRow : public QAbstractButton {
    Q_OBJECT

public:
    /// `look` outlives the row.
    ChoiceRow(const common::Look& look, QWidget* parent = nullptr);

    void setView(const ChoiceRowView& view);
    [[nodiscard]] const ChoiceRowView& view() const { return m_view; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QString detail() const;

    const common::Look& m_look;
    ChoiceRowView m_view;
};

}  // namespace chalk::ui::check_in
