#pragma once

#include <QString>
#include <QStringList>

namespace chalk::store {

/// A table whose texts are sealed where the studio is.
struct SealedTable {
    QString name;
    QStringList primaryKey;
    /// What tells a row from the others, as SQL: a sealed text opens in a row with the same ones only. A row that takes another one back keeps them.
    QStringList key;
    QStringList texts;
    QString bytes;              ///< a column of bytes; empty where there is none
    bool isRewritten = false;   ///< its rows are written over: then each writing has a number of its own
};

/// All of them: what is about health, and what was written freely about a person.
[[nodiscard]] const QList<SealedTable>& sealedTables();

/// One of them by its name, which is there.
[[nodiscard]] const SealedTable& sealedTable(const QString& name);

}  // namespace chalk::store
