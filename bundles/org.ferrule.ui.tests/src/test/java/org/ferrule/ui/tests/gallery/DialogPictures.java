/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferenceManager;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.wizards.IWizardCategory;
import org.eclipse.ui.wizards.IWizardDescriptor;
import org.eclipse.ui.wizards.IWizardRegistry;

/** Every wizard of ours with the pages that it leads to, and every preference page. */
final class DialogPictures {
    /** Commands that open a dialog of SWT's own widgets and wait for it. */
    private static final List<String> DIALOGS = List.of("org.ferrule.ui.errorReport",
            "org.eclipse.ui.help.aboutAction");

    private final IWorkbench workbench = PlatformUI.getWorkbench();
    private final Camera camera;
    private final IProject demo;

    DialogPictures(Camera camera, IProject demo) {
        this.camera = camera;
        this.demo = demo;
    }

    void take() {
        Stream.of(workbench.getNewWizardRegistry(), workbench.getExportWizardRegistry(),
                workbench.getImportWizardRegistry()).map(IWizardRegistry::getRootCategory)
                .flatMap(DialogPictures::wizards).filter(wizard -> ScreenGallery.isOurs(wizard.getId()))
                .forEach(this::wizard);
        workbench.getPreferenceManager().getElements(PreferenceManager.PRE_ORDER).stream()
                .map(IPreferenceNode.class::cast).map(IPreferenceNode::getId).forEach(this::preferences);
        DIALOGS.forEach(this::dialog);
    }

    private static Stream<IWizardDescriptor> wizards(IWizardCategory category) {
        return Stream.concat(Stream.of(category.getWizards()),
                Stream.of(category.getCategories()).flatMap(DialogPictures::wizards));
    }

    private void wizard(IWizardDescriptor descriptor) {
        WizardDialog[] opened = new WizardDialog[1];
        try {
            camera.take("wizard-" + descriptor.getId() + "-1", () -> opened[0] = open(descriptor));
            pages(descriptor.getId(), opened[0]);
        } finally {
            close(opened[0]);
        }
    }

    private WizardDialog open(IWizardDescriptor descriptor) throws CoreException {
        IWorkbenchWizard wizard = descriptor.createWizard();
        wizard.init(workbench, new StructuredSelection(demo));
        WizardDialog dialog = new WizardDialog(shell(), wizard);
        dialog.setBlockOnOpen(false);
        dialog.open();
        return dialog;
    }

    private void pages(String id, WizardDialog dialog) {
        int number = 2;
        IWizardPage page = next(dialog);
        while (page != null) {
            IWizardPage shown = page;
            camera.take("wizard-" + id + "-" + number, () -> dialog.showPage(shown));
            number++;
            page = next(dialog);
        }
    }

    private static IWizardPage next(WizardDialog dialog) {
        return dialog != null && dialog.getCurrentPage().canFlipToNextPage() ? dialog.getCurrentPage().getNextPage()
                : null;
    }

    private static void close(WizardDialog dialog) {
        if (dialog != null) {
            dialog.close();
        }
    }

    private void preferences(String id) {
        List<PreferenceDialog> opened = new ArrayList<>();
        camera.take("preferences-" + id, () -> {
            PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(shell(), id, null, null);
            opened.add(dialog);
            dialog.setBlockOnOpen(false);
            dialog.open();
        });
        opened.forEach(PreferenceDialog::close);
    }

    private void dialog(String command) {
        camera.takeDialog("dialog-" + command, () -> {
            try {
                workbench.getService(IHandlerService.class).executeCommand(command, null);
            } catch (CommandException e) {
                throw new IllegalStateException(command, e);
            }
        });
    }

    private Shell shell() {
        return workbench.getActiveWorkbenchWindow().getShell();
    }
}
