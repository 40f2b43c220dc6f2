/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.edit.DocumentEditor;

/** A project with one document, open in its editor. */
public final class EditorFixture implements AutoCloseable {

    private final Robot robot = new Robot();
    private final IProject project;
    private final IFile file;
    private DocumentEditor editor;

    /** Creates the project and the file and opens the editor. */
    public EditorFixture(String fileName, String content) throws CoreException {
        project = Projects.create("Test");
        file = Projects.write(project, fileName, content);
        open();
    }

    /** Opens the editor again. */
    public void open() throws PartInitException {
        editor = (DocumentEditor) IDE.openEditor(page(), file);
        robot.settle();
    }

    /** Returns the page of the workbench window. */
    public static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }

    /** Returns the robot. */
    public Robot robot() {
        return robot;
    }

    /** Returns the editor. */
    public DocumentEditor editor() {
        return editor;
    }

    /** Returns the file. */
    public IFile file() {
        return file;
    }

    /** Returns what the editor shows. */
    public Composite body() {
        return editor.getActivePageInstance().getPartControl().getParent();
    }

    /** Shows the object at the path in the editor. */
    public void reveal(String path) {
        if (!editor.reveal(path)) {
            throw new AssertionError(path + " is not shown");
        }
        robot.settle();
    }

    /** Returns the text of the file on disk. */
    public String text() throws CoreException, IOException {
        try (InputStream stream = file.getContents(true)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() throws CoreException {
        page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }
}
