#pragma once

#include "core/store/store_error.h"

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <memory>

namespace chalk::store {

/// Files that are written beside those of the same names in a folder, and take their places all at the end: what is given up leaves the folder as it was.
class FolderBeside {
public:
    explicit FolderBeside(const QString& folder);
    /// Takes away what was not kept, and the folder itself where it was made for nothing.
    ~FolderBeside();
    FolderBeside(const FolderBeside&) = delete;
    FolderBeside& operator=(const FolderBeside&) = delete;

    /// Makes the folder where it is not there, for its owner only, and a place in it to write to.
    [[nodiscard]] Result<void> begin();
    /// Where the files are written to meanwhile; empty before `begin`.
    [[nodiscard]] QString path() const { return m_beside ? m_beside->path() : QString(); }
    /// Puts every file that was written, in folders of it too, in the place of the one of its name. Others are left alone. Where one cannot be put
    /// there, those before it go back.
    [[nodiscard]] Result<void> keep();

private:
    struct Moved {
        QString from;
        QString to;
    };

    [[nodiscard]] bool move(const QString& from, const QString& to);
    [[nodiscard]] bool exchange(const QString& name);
    void goBack();

    QString m_folder;
    QString m_firstMade;  ///< the uppermost folder that was made
    std::unique_ptr<QTemporaryDir> m_beside;
    std::unique_ptr<QTemporaryDir> m_before;  ///< what was there before
    std::vector<Moved> m_moved;
};

}  // namespace chalk::store
