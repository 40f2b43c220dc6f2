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

import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.RuleSet;

/**
 * This is the item provider adapter for a {@link org.ferrule.model.RuleSet} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class RuleSetItemProvider extends DocumentItemProvider
{
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RuleSetItemProvider(AdapterFactory adapterFactory)
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

			addConfidencePropertyDescriptor(object);
			addCoveragePropertyDescriptor(object);
			addWireAheadPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Confidence feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addConfidencePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RuleSet_confidence_feature"),
				 getString("_UI_RuleSet_confidence_description"),
				 ModelPackage.Literals.RULE_SET__CONFIDENCE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Coverage feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addCoveragePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RuleSet_coverage_feature"),
				 getString("_UI_RuleSet_coverage_description"),
				 ModelPackage.Literals.RULE_SET__COVERAGE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This adds a property descriptor for the Wire Ahead feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addWireAheadPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_RuleSet_wireAhead_feature"),
				 getString("_UI_RuleSet_wireAhead_description"),
				 ModelPackage.Literals.RULE_SET__WIRE_AHEAD,
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
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__SPANS);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__CLEARANCES);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__AFTER_USE);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__FLOW_LIMITS);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__ALLOWANCES);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__RATIO_BANDS);
			childrenFeatures.add(ModelPackage.Literals.RULE_SET__CHANCE_LIMITS);
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
		return org.ferrule.model.ObjectLabels.of(object, getString("_UI_RuleSet_type"));
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

		switch (notification.getFeatureID(RuleSet.class))
		{
			case ModelPackage.RULE_SET__CONFIDENCE:
			case ModelPackage.RULE_SET__COVERAGE:
			case ModelPackage.RULE_SET__WIRE_AHEAD:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case ModelPackage.RULE_SET__SPANS:
			case ModelPackage.RULE_SET__CLEARANCES:
			case ModelPackage.RULE_SET__AFTER_USE:
			case ModelPackage.RULE_SET__FLOW_LIMITS:
			case ModelPackage.RULE_SET__ALLOWANCES:
			case ModelPackage.RULE_SET__RATIO_BANDS:
			case ModelPackage.RULE_SET__CHANCE_LIMITS:
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
				(ModelPackage.Literals.RULE_SET__SPANS,
				 ModelFactory.eINSTANCE.createSpan()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__CLEARANCES,
				 ModelFactory.eINSTANCE.createClearanceRule()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__AFTER_USE,
				 ModelFactory.eINSTANCE.createAfterUseRule()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__FLOW_LIMITS,
				 ModelFactory.eINSTANCE.createFlowLimit()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__ALLOWANCES,
				 ModelFactory.eINSTANCE.createAllowance()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__RATIO_BANDS,
				 ModelFactory.eINSTANCE.createRatioBand()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.RULE_SET__CHANCE_LIMITS,
				 ModelFactory.eINSTANCE.createChanceLimit()));
	}

}
