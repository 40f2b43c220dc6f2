/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Advised;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Published;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Advised</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.AdvisedImpl#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AdvisedImpl#getCautions <em>Cautions</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AdvisedImpl#getOffLabel <em>Off Label</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AdvisedImpl#getStop <em>Stop</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AdvisedImpl#getPublished <em>Published</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class AdvisedImpl extends SourcedImpl implements Advised
{
	/**
	 * The cached value of the '{@link #getChanges() <em>Changes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected EList<String> changes;

	/**
	 * The cached value of the '{@link #getCautions() <em>Cautions</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCautions()
	 * @generated
	 * @ordered
	 */
	protected EList<String> cautions;

	/**
	 * The default value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String OFF_LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected String offLabel = OFF_LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected static final String STOP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected String stop = STOP_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPublished() <em>Published</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPublished()
	 * @generated
	 * @ordered
	 */
	protected EList<Published> published;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AdvisedImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.ADVISED;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getChanges()
	{
		if (changes == null)
		{
			changes = new EDataTypeEList<String>(String.class, this, ModelPackage.ADVISED__CHANGES);
		}
		return changes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getCautions()
	{
		if (cautions == null)
		{
			cautions = new EDataTypeEList<String>(String.class, this, ModelPackage.ADVISED__CAUTIONS);
		}
		return cautions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOffLabel()
	{
		return offLabel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffLabel(String newOffLabel)
	{
		String oldOffLabel = offLabel;
		offLabel = newOffLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ADVISED__OFF_LABEL, oldOffLabel, offLabel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStop()
	{
		return stop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStop(String newStop)
	{
		String oldStop = stop;
		stop = newStop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ADVISED__STOP, oldStop, stop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Published> getPublished()
	{
		if (published == null)
		{
			published = new EObjectContainmentEList<Published>(Published.class, this, ModelPackage.ADVISED__PUBLISHED);
		}
		return published;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.ADVISED__PUBLISHED:
				return ((InternalEList<?>)getPublished()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.ADVISED__CHANGES:
				return getChanges();
			case ModelPackage.ADVISED__CAUTIONS:
				return getCautions();
			case ModelPackage.ADVISED__OFF_LABEL:
				return getOffLabel();
			case ModelPackage.ADVISED__STOP:
				return getStop();
			case ModelPackage.ADVISED__PUBLISHED:
				return getPublished();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.ADVISED__CHANGES:
				getChanges().clear();
				getChanges().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.ADVISED__CAUTIONS:
				getCautions().clear();
				getCautions().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.ADVISED__OFF_LABEL:
				setOffLabel((String)newValue);
				return;
			case ModelPackage.ADVISED__STOP:
				setStop((String)newValue);
				return;
			case ModelPackage.ADVISED__PUBLISHED:
				getPublished().clear();
				getPublished().addAll((Collection<? extends Published>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.ADVISED__CHANGES:
				getChanges().clear();
				return;
			case ModelPackage.ADVISED__CAUTIONS:
				getCautions().clear();
				return;
			case ModelPackage.ADVISED__OFF_LABEL:
				setOffLabel(OFF_LABEL_EDEFAULT);
				return;
			case ModelPackage.ADVISED__STOP:
				setStop(STOP_EDEFAULT);
				return;
			case ModelPackage.ADVISED__PUBLISHED:
				getPublished().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.ADVISED__CHANGES:
				return changes != null && !changes.isEmpty();
			case ModelPackage.ADVISED__CAUTIONS:
				return cautions != null && !cautions.isEmpty();
			case ModelPackage.ADVISED__OFF_LABEL:
				return OFF_LABEL_EDEFAULT == null ? offLabel != null : !OFF_LABEL_EDEFAULT.equals(offLabel);
			case ModelPackage.ADVISED__STOP:
				return STOP_EDEFAULT == null ? stop != null : !STOP_EDEFAULT.equals(stop);
			case ModelPackage.ADVISED__PUBLISHED:
				return published != null && !published.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (changes: ");
		result.append(changes);
		result.append(", cautions: ");
		result.append(cautions);
		result.append(", offLabel: ");
		result.append(offLabel);
		result.append(", stop: ");
		result.append(stop);
		result.append(')');
		return result.toString();
	}

} //AdvisedImpl
