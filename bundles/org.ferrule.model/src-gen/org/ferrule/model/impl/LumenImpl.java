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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Lumen;
import org.ferrule.model.LumenOpening;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.ModelPackage;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lumen</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getUse <em>Use</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getDistalAt <em>Distal At</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getProximalAt <em>Proximal At</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getOpens <em>Opens</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LumenImpl#getSections <em>Sections</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LumenImpl extends SourcedImpl implements Lumen
{
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getUse() <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUse()
	 * @generated
	 * @ordered
	 */
	protected static final LumenUse USE_EDEFAULT = LumenUse.WORKING;

	/**
	 * The cached value of the '{@link #getUse() <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUse()
	 * @generated
	 * @ordered
	 */
	protected LumenUse use = USE_EDEFAULT;

	/**
	 * This is true if the Use attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean useESet;

	/**
	 * The default value of the '{@link #getDistalAt() <em>Distal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistalAt()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension DISTAL_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistalAt() <em>Distal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistalAt()
	 * @generated
	 * @ordered
	 */
	protected Dimension distalAt = DISTAL_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getProximalAt() <em>Proximal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProximalAt()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension PROXIMAL_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProximalAt() <em>Proximal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProximalAt()
	 * @generated
	 * @ordered
	 */
	protected Dimension proximalAt = PROXIMAL_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpens() <em>Opens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpens()
	 * @generated
	 * @ordered
	 */
	protected static final LumenOpening OPENS_EDEFAULT = LumenOpening.HUB;

	/**
	 * The cached value of the '{@link #getOpens() <em>Opens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpens()
	 * @generated
	 * @ordered
	 */
	protected LumenOpening opens = OPENS_EDEFAULT;

	/**
	 * This is true if the Opens attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean opensESet;

	/**
	 * The cached value of the '{@link #getSections() <em>Sections</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSections()
	 * @generated
	 * @ordered
	 */
	protected EList<LumenSection> sections;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LumenImpl()
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
		return ModelPackage.Literals.LUMEN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LUMEN__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LumenUse getUse()
	{
		return use;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUse(LumenUse newUse)
	{
		LumenUse oldUse = use;
		use = newUse == null ? USE_EDEFAULT : newUse;
		boolean oldUseESet = useESet;
		useESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LUMEN__USE, oldUse, use, !oldUseESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetUse()
	{
		LumenUse oldUse = use;
		boolean oldUseESet = useESet;
		use = USE_EDEFAULT;
		useESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LUMEN__USE, oldUse, USE_EDEFAULT, oldUseESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetUse()
	{
		return useESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getDistalAt()
	{
		return distalAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistalAt(Dimension newDistalAt)
	{
		Dimension oldDistalAt = distalAt;
		distalAt = newDistalAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LUMEN__DISTAL_AT, oldDistalAt, distalAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getProximalAt()
	{
		return proximalAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProximalAt(Dimension newProximalAt)
	{
		Dimension oldProximalAt = proximalAt;
		proximalAt = newProximalAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LUMEN__PROXIMAL_AT, oldProximalAt, proximalAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LumenOpening getOpens()
	{
		return opens;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpens(LumenOpening newOpens)
	{
		LumenOpening oldOpens = opens;
		opens = newOpens == null ? OPENS_EDEFAULT : newOpens;
		boolean oldOpensESet = opensESet;
		opensESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LUMEN__OPENS, oldOpens, opens, !oldOpensESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetOpens()
	{
		LumenOpening oldOpens = opens;
		boolean oldOpensESet = opensESet;
		opens = OPENS_EDEFAULT;
		opensESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LUMEN__OPENS, oldOpens, OPENS_EDEFAULT, oldOpensESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetOpens()
	{
		return opensESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LumenSection> getSections()
	{
		if (sections == null)
		{
			sections = new EObjectContainmentEList<LumenSection>(LumenSection.class, this, ModelPackage.LUMEN__SECTIONS);
		}
		return sections;
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
			case ModelPackage.LUMEN__SECTIONS:
				return ((InternalEList<?>)getSections()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.LUMEN__NAME:
				return getName();
			case ModelPackage.LUMEN__USE:
				return getUse();
			case ModelPackage.LUMEN__DISTAL_AT:
				return getDistalAt();
			case ModelPackage.LUMEN__PROXIMAL_AT:
				return getProximalAt();
			case ModelPackage.LUMEN__OPENS:
				return getOpens();
			case ModelPackage.LUMEN__SECTIONS:
				return getSections();
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
			case ModelPackage.LUMEN__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.LUMEN__USE:
				setUse((LumenUse)newValue);
				return;
			case ModelPackage.LUMEN__DISTAL_AT:
				setDistalAt((Dimension)newValue);
				return;
			case ModelPackage.LUMEN__PROXIMAL_AT:
				setProximalAt((Dimension)newValue);
				return;
			case ModelPackage.LUMEN__OPENS:
				setOpens((LumenOpening)newValue);
				return;
			case ModelPackage.LUMEN__SECTIONS:
				getSections().clear();
				getSections().addAll((Collection<? extends LumenSection>)newValue);
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
			case ModelPackage.LUMEN__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.LUMEN__USE:
				unsetUse();
				return;
			case ModelPackage.LUMEN__DISTAL_AT:
				setDistalAt(DISTAL_AT_EDEFAULT);
				return;
			case ModelPackage.LUMEN__PROXIMAL_AT:
				setProximalAt(PROXIMAL_AT_EDEFAULT);
				return;
			case ModelPackage.LUMEN__OPENS:
				unsetOpens();
				return;
			case ModelPackage.LUMEN__SECTIONS:
				getSections().clear();
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
			case ModelPackage.LUMEN__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.LUMEN__USE:
				return isSetUse();
			case ModelPackage.LUMEN__DISTAL_AT:
				return DISTAL_AT_EDEFAULT == null ? distalAt != null : !DISTAL_AT_EDEFAULT.equals(distalAt);
			case ModelPackage.LUMEN__PROXIMAL_AT:
				return PROXIMAL_AT_EDEFAULT == null ? proximalAt != null : !PROXIMAL_AT_EDEFAULT.equals(proximalAt);
			case ModelPackage.LUMEN__OPENS:
				return isSetOpens();
			case ModelPackage.LUMEN__SECTIONS:
				return sections != null && !sections.isEmpty();
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
		result.append(" (name: ");
		result.append(name);
		result.append(", use: ");
		if (useESet) result.append(use); else result.append("<unset>");
		result.append(", distalAt: ");
		result.append(distalAt);
		result.append(", proximalAt: ");
		result.append(proximalAt);
		result.append(", opens: ");
		if (opensESet) result.append(opens); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //LumenImpl
