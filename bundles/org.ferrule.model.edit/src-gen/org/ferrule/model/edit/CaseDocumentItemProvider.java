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

import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;

/**
 * This is the item provider adapter for a {@link org.ferrule.model.CaseDocument} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class CaseDocumentItemProvider extends DocumentItemProvider
{
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CaseDocumentItemProvider(AdapterFactory adapterFactory)
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

			addLibrariesPropertyDescriptor(object);
			addRulesPropertyDescriptor(object);
			addTechniquesPropertyDescriptor(object);
			addShelfPropertyDescriptor(object);
			addDayPropertyDescriptor(object);
			addDeliverPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
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
				 getString("_UI_CaseDocument_libraries_feature"),
				 getString("_UI_CaseDocument_libraries_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__LIBRARIES,
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
				 getString("_UI_CaseDocument_rules_feature"),
				 getString("_UI_CaseDocument_rules_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__RULES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Techniques feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTechniquesPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CaseDocument_techniques_feature"),
				 getString("_UI_CaseDocument_techniques_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__TECHNIQUES,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Shelf feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addShelfPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CaseDocument_shelf_feature"),
				 getString("_UI_CaseDocument_shelf_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__SHELF,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Day feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDayPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CaseDocument_day_feature"),
				 getString("_UI_CaseDocument_day_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__DAY,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Deliver feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addDeliverPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_CaseDocument_deliver_feature"),
				 getString("_UI_CaseDocument_deliver_description"),
				 ModelPackage.Literals.CASE_DOCUMENT__DELIVER,
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
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__ACCESS);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__SYSTEM);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__PATH);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__LESION);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__BRANCH);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__FACTS);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__MEASURES);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__PATIENT);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__AIM);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__SPENT);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__LOG);
			childrenFeatures.add(ModelPackage.Literals.CASE_DOCUMENT__CLOSING);
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
	 * This returns CaseDocument.gif.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object getImage(Object object)
	{
		return overlayImage(object, getResourceLocator().getImage("full/obj16/CaseDocument"));
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
		return org.ferrule.model.ObjectLabels.of(object, getString("_UI_CaseDocument_type"));
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

		switch (notification.getFeatureID(CaseDocument.class))
		{
			case ModelPackage.CASE_DOCUMENT__LIBRARIES:
			case ModelPackage.CASE_DOCUMENT__RULES:
			case ModelPackage.CASE_DOCUMENT__TECHNIQUES:
			case ModelPackage.CASE_DOCUMENT__SHELF:
			case ModelPackage.CASE_DOCUMENT__DAY:
			case ModelPackage.CASE_DOCUMENT__DELIVER:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case ModelPackage.CASE_DOCUMENT__ACCESS:
			case ModelPackage.CASE_DOCUMENT__SYSTEM:
			case ModelPackage.CASE_DOCUMENT__PATH:
			case ModelPackage.CASE_DOCUMENT__LESION:
			case ModelPackage.CASE_DOCUMENT__BRANCH:
			case ModelPackage.CASE_DOCUMENT__FACTS:
			case ModelPackage.CASE_DOCUMENT__MEASURES:
			case ModelPackage.CASE_DOCUMENT__PATIENT:
			case ModelPackage.CASE_DOCUMENT__AIM:
			case ModelPackage.CASE_DOCUMENT__SPENT:
			case ModelPackage.CASE_DOCUMENT__LOG:
			case ModelPackage.CASE_DOCUMENT__CLOSING:
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
				(ModelPackage.Literals.CASE_DOCUMENT__ACCESS,
				 ModelFactory.eINSTANCE.createAccess()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__SYSTEM,
				 ModelFactory.eINSTANCE.createSystemInPlace()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__PATH,
				 ModelFactory.eINSTANCE.createVesselPath()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__LESION,
				 ModelFactory.eINSTANCE.createLesion()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__BRANCH,
				 ModelFactory.eINSTANCE.createSideBranch()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__FACTS,
				 ModelFactory.eINSTANCE.createStatedFact()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__MEASURES,
				 ModelFactory.eINSTANCE.createLesionMeasures()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__PATIENT,
				 ModelFactory.eINSTANCE.createPatientFigures()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__AIM,
				 ModelFactory.eINSTANCE.createCaseAim()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__SPENT,
				 ModelFactory.eINSTANCE.createCosts()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__LOG,
				 ModelFactory.eINSTANCE.createLoggedAttempt()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.CASE_DOCUMENT__CLOSING,
				 ModelFactory.eINSTANCE.createClosing()));
	}

}
