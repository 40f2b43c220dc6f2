/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.wizards.newresource.BasicNewResourceWizard;
import org.ferrule.model.DocumentKind;

/** Asks for a name and creates a document of the kind that the extension names after its class. */
public class NewDocument extends Wizard implements INewWizard, IExecutableExtension {

    private DocumentKind kind;
    private IWorkbench workbench;
    private NewDocumentPage page;
    private IStructuredSelection selection;

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        kind = DocumentKind.valueOf(String.valueOf(data));
    }

    @Override
    public void init(IWorkbench current, IStructuredSelection chosen) {
        workbench = current;
        selection = chosen;
        setWindowTitle("New " + NewDocumentPage.word(kind));
    }

    @Override
    public void addPages() {
        page = new NewDocumentPage(kind, selection);
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        // the page makes the file by what stands in its field
        page.setFileName(page.getFileName());
        IFile file = page.createNewFile();
        if (file == null) {
            return false;
        }
        try {
            BasicNewResourceWizard.selectAndReveal(file, workbench.getActiveWorkbenchWindow());
            IDE.openEditor(workbench.getActiveWorkbenchWindow().getActivePage(), file);
        } catch (CoreException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
        return true;
    }
}
