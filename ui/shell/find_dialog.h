#pragma once

#include "ui/shell/find_provider.h"
#include "ui/shell/overlay.h"

#include <memory>

class QLabel;
class QLineEdit;
class QListView;

namespace chalk::ui::shell {

class FindModel;

/// Ctrl+K: one field that finds clients, lifts, actions and results, over whatever page is open.
class FindDialog : public Overlay {
    Q_OBJECT

public:
    FindDialog(const common::Look& look, QWidget* window);
    ~FindDialog() override;

    /// Asked in this order.
    void addProvider(std::unique_ptr<FindProvider> provider);
    /// Opens the box with `query` in it.
    void start(const QString& query = {});

    [[nodiscard]] QLineEdit* field() const { return m_field; }
    [[nodiscard]] FindModel* model() const { return m_model; }

protected:
    [[nodiscard]] QRect cardRect() const override;
    void layCard() override;
    [[nodiscard]] QWidget* focusTarget() override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void find();
    void showNothing(const QString& query);
    void moveChoice(int step);
    void run(int row);
    [[nodiscard]] int listHeight() const;
    [[nodiscard]] std::vector<const FindProvider*> providers() const;

    std::vector<std::unique_ptr<FindProvider>> m_providers;
    FindModel* m_model;
    QLineEdit* m_field;
    QListView* m_list;
    QLabel* m_nothing;
    QString m_meant;
};

}  // namespace chalk::ui::shell
