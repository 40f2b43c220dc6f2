/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.net.URL;
import java.util.Map;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.ide.IDE;

/** Images that the platform's views and wizards ask for by name and that only the host application can declare. */
final class PlatformImages {

    private static final String IDE_BUNDLE = "org.eclipse.ui.ide";
    private static final String FOLDER = "$nl$/icons/full/";
    private static final Map<String, String> FILES = Map.ofEntries(
            Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT, "obj16/prj_obj.svg"),
            Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT_CLOSED, "obj16/cprj_obj.svg"),
            Map.entry("IMG_OBJS_ERROR_PATH", "obj16/error_tsk.svg"),
            Map.entry("IMG_OBJS_WARNING_PATH", "obj16/warn_tsk.svg"),
            Map.entry("IMG_OBJS_INFO_PATH", "obj16/info_tsk.svg"),
            Map.entry("IMG_OBJS_FIXABLE_ERROR", "obj16/quickfix_error_obj.svg"),
            Map.entry("IMG_OBJS_FIXABLE_WARNING", "obj16/quickfix_warning_obj.svg"),
            Map.entry("IMG_OBJS_FIXABLE_INFO", "obj16/quickfix_info_obj.svg"),
            Map.entry("IMG_ETOOL_PROBLEM_CATEGORY", "etool16/problem_category.svg"),
            Map.entry("IMG_ETOOL_PROBLEMS_VIEW", "eview16/problems_view.svg"),
            Map.entry("IMG_ETOOL_PROBLEMS_VIEW_ERROR", "eview16/problems_view_error.svg"),
            Map.entry("IMG_ETOOL_PROBLEMS_VIEW_WARNING", "eview16/problems_view_warning.svg"),
            Map.entry("IMG_ETOOL_PROBLEMS_VIEW_INFO", "eview16/problems_view_info.svg"),
            Map.entry("IMG_LCL_FLAT_LAYOUT", "elcl16/flatLayout.svg"),
            Map.entry("IMG_LCL_HIERARCHICAL_LAYOUT", "elcl16/hierarchicalLayout.svg"),
            Map.entry("IMG_WIZBAN_NEWPRJ_WIZ", "wizban/newprj_wiz.png"),
            Map.entry("IMG_WIZBAN_NEWFOLDER_WIZ", "wizban/newfolder_wiz.png"),
            Map.entry("IMG_WIZBAN_NEWFILE_WIZ", "wizban/newfile_wiz.png"),
            Map.entry("IMG_DLGBAN_SAVEAS_DLG", "wizban/saveas_wiz.png"),
            Map.entry("IMG_DLGBAN_QUICKFIX_DLG", "wizban/quick_fix.png"));

    private PlatformImages() {
    }

    static void declare(IWorkbenchConfigurer configurer) {
        FILES.forEach((name, file) -> declare(configurer, name, file));
    }

    private static void declare(IWorkbenchConfigurer configurer, String name, String file) {
        URL url = FileLocator.find(Platform.getBundle(IDE_BUNDLE), IPath.fromPortableString(FOLDER + file), null);
        configurer.declareImage(name, ImageDescriptor.createFromURL(url), true);
    }
}
