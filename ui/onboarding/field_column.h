#pragma once

#include <QWidget>

class QGridLayout;
class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// Fields below each other, each with its name at the left and room for a word about it below.
class FieldColumn : public QWidget {
    Q_OBJECT

public:
    /// `nameWidth` is that of the names, in pixels at a text size of 100 %.
    explicit FieldColumn(const common::Look& look, QWidget* parent = nullptr, double nameWidth = 148);

    void addHeading(const QString& text);
    /// The name is the field's for screen readers too. `field` belongs to the column.
    void addField(const QString& name, QWidget* field);
    /// The same with the name above it and the whole width for the field: for a sentence.
    void addWideField(const QString& name, QWidget* field);
    /// A line over the whole width: a sentence, a check box.
    void addLine(QWidget* line);

    /// What is wrong with a field; empty: nothing. The field shows it too.
    void setFault(QWidget* field, const QString& fault);
    /// What is read from a field or what it is for; empty: nothing. A fault goes before it.
    void setNote(QWidget* field, const QString& note);
    /// Takes a field out of sight with its name, or brings it back.
    void setFieldVisible(QWidget* field, bool isVisible);

private:
    struct Row {
        QWidget* field = nullptr;
        QLabel* name = nullptr;
        QLabel* word = nullptr;
        QString note = {};
        QString fault = {};
    };

    Row& addRow(const QString& name, QWidget* field);
    [[nodiscard]] Row& rowOf(const QWidget* field);
    static void showWord(const Row& row);
    void dress();

    const common::Look& m_look;
    QGridLayout* m_grid;
    double m_nameWidth;
    std::vector<Row> m_rows;
    int m_next = 0;
};

}  // namespace chalk::ui::onboarding
