/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

import org.eclipse.compare.CompareConfiguration;
import org.eclipse.compare.CompareEditorInput;
import org.eclipse.compare.CompareUI;
import org.eclipse.compare.IStreamContentAccessor;
import org.eclipse.compare.ITypedElement;
import org.eclipse.compare.structuremergeviewer.DiffNode;
import org.eclipse.compare.structuremergeviewer.Differencer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.graphics.Image;
import org.ferrule.ui.document.DocumentSession;

/** Shows the unsaved state of a document beside its file on disk, as texts. */
public final class DiskCompare extends CompareEditorInput {

    private final IFile file;
    private final byte[] mine;

    DiskCompare(DocumentSession session) {
        this(session.file(), session.toBytes(), "Mine, not saved");
    }

    /**
     * Creates a comparison.
     *
     * @param file the file on disk, on the right
     * @param mine what stands on the left
     * @param label what that is
     */
    public DiskCompare(IFile file, byte[] mine, String label) {
        super(configuration(label));
        this.file = file;
        this.mine = mine;
        setTitle("Compare " + file.getName());
    }

    private static CompareConfiguration configuration(String label) {
        CompareConfiguration configuration = new CompareConfiguration();
        configuration.setLeftLabel(label);
        configuration.setRightLabel("Theirs, on disk");
        return configuration;
    }

    /** Opens it in a dialog. */
    public void open() {
        CompareUI.openCompareDialog(this);
    }

    @Override
    protected Object prepareInput(IProgressMonitor monitor) {
        return new DiffNode(null, Differencer.CHANGE, null, new Side(() -> new ByteArrayInputStream(mine)),
                new Side(() -> file.getContents(true)));
    }

    private interface Content {
        InputStream open() throws CoreException;
    }

    private record Side(Content content) implements ITypedElement, IStreamContentAccessor {

        @Override
        public InputStream getContents() throws CoreException {
            return content.open();
        }

        @Override
        public String getName() {
            return "document";
        }

        @Override
        public Image getImage() {
            return null;
        }

        @Override
        public String getType() {
            return TEXT_TYPE;
        }
    }
}
