/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.edit;


import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EStructuralFeature;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ViewerNotification;

import org.ferrule.model.FitChart;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;

/**
 * This is the item provider adapter for a {@link org.ferrule.model.FitChart} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class FitChartItemProvider extends DocumentItemProvider
{
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FitChartItemProvider(AdapterFactory adapterFactory)
	{
		super(adapterFactory);
	}

	/**
	 * This returns the property descriptors for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<IItemPropertyDescriptor> getPropertyDescriptors(Object object)
	{
		if (itemPropertyDescriptors == null)
		{
			super.getPropertyDescriptors(object);

			addAudiencePropertyDescriptor(object);
			addAuthorPropertyDescriptor(object);
			addLibrariesPropertyDescriptor(object);
			addRulesPropertyDescriptor(object);
			addFootnotesPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Audience feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAudiencePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FitChart_audience_feature"),
				 getString("_UI_FitChart_audience_description"),
				 ModelPackage.Literals.FIT_CHART__AUDIENCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Author feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addAuthorPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FitChart_author_feature"),
				 getString("_UI_FitChart_author_description"),
				 ModelPackage.Literals.FIT_CHART__AUTHOR,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Libraries feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addLibrariesPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FitChart_libraries_feature"),
				 getString("_UI_FitChart_libraries_description"),
				 ModelPackage.Literals.FIT_CHART__LIBRARIES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Rules feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addRulesPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FitChart_rules_feature"),
				 getString("_UI_FitChart_rules_description"),
				 ModelPackage.Literals.FIT_CHART__RULES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Footnotes feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addFootnotesPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_FitChart_footnotes_feature"),
				 getString("_UI_FitChart_footnotes_description"),
				 ModelPackage.Literals.FIT_CHART__FOOTNOTES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This specifies how to implement {@link #getChildren} and is used to deduce an appropriate feature for an
	 * {@link org.eclipse.emf.edit.command.AddCommand}, {@link org.eclipse.emf.edit.command.RemoveCommand} or
	 * {@link org.eclipse.emf.edit.command.MoveCommand} in {@link #createCommand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Collection<? extends EStructuralFeature> getChildrenFeatures(Object object)
	{
		if (childrenFeatures == null)
		{
			super.getChildrenFeatures(object);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__OUTER);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__INNER);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__CONDITIONS);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__PATH);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__LESION);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__PAPER);
			childrenFeatures.add(ModelPackage.Literals.FIT_CHART__SIGN_OFF);
		}
		return childrenFeatures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EStructuralFeature getChildFeature(Object object, Object child)
	{
		// Check the type of the specified child object and return the proper feature to use for
		// adding (see {@link AddCommand}) it as a child.

		return super.getChildFeature(object, child);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected boolean shouldComposeCreationImage()
	{
		return true;
	}

	/**
	 * This returns the label text for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText(Object object)
	{
		return org.ferrule.model.ObjectLabels.of(object, getString("_UI_FitChart_type"));
	}


	/**
	 * This handles model notifications by calling {@link #updateChildren} to update any cached
	 * children and by creating a viewer notification, which it passes to {@link #fireNotifyChanged}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void notifyChanged(Notification notification)
	{
		updateChildren(notification);

		switch (notification.getFeatureID(FitChart.class))
		{
			case ModelPackage.FIT_CHART__AUDIENCE:
			case ModelPackage.FIT_CHART__AUTHOR:
			case ModelPackage.FIT_CHART__LIBRARIES:
			case ModelPackage.FIT_CHART__RULES:
			case ModelPackage.FIT_CHART__FOOTNOTES:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case ModelPackage.FIT_CHART__OUTER:
			case ModelPackage.FIT_CHART__INNER:
			case ModelPackage.FIT_CHART__CONDITIONS:
			case ModelPackage.FIT_CHART__PATH:
			case ModelPackage.FIT_CHART__LESION:
			case ModelPackage.FIT_CHART__PAPER:
			case ModelPackage.FIT_CHART__SIGN_OFF:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), true, false));
				return;
		}
		super.notifyChanged(notification);
	}

	/**
	 * This adds {@link org.eclipse.emf.edit.command.CommandParameter}s describing the children
	 * that can be created under this object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected void collectNewChildDescriptors(Collection<Object> newChildDescriptors, Object object)
	{
		super.collectNewChildDescriptors(newChildDescriptors, object);

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__OUTER,
				 ModelFactory.eINSTANCE.createAxis()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__INNER,
				 ModelFactory.eINSTANCE.createAxis()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__CONDITIONS,
				 ModelFactory.eINSTANCE.createConditions()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__PATH,
				 ModelFactory.eINSTANCE.createVesselPath()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__LESION,
				 ModelFactory.eINSTANCE.createLesion()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__PAPER,
				 ModelFactory.eINSTANCE.createPaper()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.FIT_CHART__SIGN_OFF,
				 ModelFactory.eINSTANCE.createSignOff()));
	}

	/**
	 * This returns the label text for {@link org.eclipse.emf.edit.command.CreateChildCommand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCreateChildText(Object owner, Object feature, Object child, Collection<?> selection)
	{
		Object childFeature = feature;
		Object childObject = child;

		boolean qualify =
			childFeature == ModelPackage.Literals.FIT_CHART__OUTER ||
			childFeature == ModelPackage.Literals.FIT_CHART__INNER;

		if (qualify)
		{
			return getString
				("_UI_CreateChild_text2",
				 new Object[] { getTypeText(childObject), getFeatureText(childFeature), getTypeText(owner) });
		}
		return super.getCreateChildText(owner, feature, child, selection);
	}

}
