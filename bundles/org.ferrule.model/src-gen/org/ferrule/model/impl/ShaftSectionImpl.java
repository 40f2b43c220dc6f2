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

import org.ferrule.model.Disc;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Oval;
import org.ferrule.model.ShaftSection;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Shaft Section</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getOd <em>Od</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getOdProximal <em>Od Proximal</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getOdAfter <em>Od After</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getOdAfterProximal <em>Od After Proximal</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getOval <em>Oval</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getDiscs <em>Discs</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#isRigid <em>Rigid</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ShaftSectionImpl#getStiffness <em>Stiffness</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ShaftSectionImpl extends SourcedImpl implements ShaftSection
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
	 * The default value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Dimension from = FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension TO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected Dimension to = TO_EDEFAULT;

	/**
	 * The default value of the '{@link #getOd() <em>Od</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOd()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension OD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOd() <em>Od</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOd()
	 * @generated
	 * @ordered
	 */
	protected Dimension od = OD_EDEFAULT;

	/**
	 * The default value of the '{@link #getOdProximal() <em>Od Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdProximal()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension OD_PROXIMAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOdProximal() <em>Od Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdProximal()
	 * @generated
	 * @ordered
	 */
	protected Dimension odProximal = OD_PROXIMAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getOdAfter() <em>Od After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdAfter()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension OD_AFTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOdAfter() <em>Od After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdAfter()
	 * @generated
	 * @ordered
	 */
	protected Dimension odAfter = OD_AFTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getOdAfterProximal() <em>Od After Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdAfterProximal()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension OD_AFTER_PROXIMAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOdAfterProximal() <em>Od After Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOdAfterProximal()
	 * @generated
	 * @ordered
	 */
	protected Dimension odAfterProximal = OD_AFTER_PROXIMAL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getOval() <em>Oval</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOval()
	 * @generated
	 * @ordered
	 */
	protected Oval oval;

	/**
	 * The cached value of the '{@link #getDiscs() <em>Discs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiscs()
	 * @generated
	 * @ordered
	 */
	protected EList<Disc> discs;

	/**
	 * The default value of the '{@link #isRigid() <em>Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRigid()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RIGID_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRigid() <em>Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRigid()
	 * @generated
	 * @ordered
	 */
	protected boolean rigid = RIGID_EDEFAULT;

	/**
	 * The default value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected static final String STIFFNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStiffness() <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStiffness()
	 * @generated
	 * @ordered
	 */
	protected String stiffness = STIFFNESS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ShaftSectionImpl()
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
		return ModelPackage.Literals.SHAFT_SECTION;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getFrom()
	{
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Dimension newFrom)
	{
		Dimension oldFrom = from;
		from = newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getTo()
	{
		return to;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Dimension newTo)
	{
		Dimension oldTo = to;
		to = newTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__TO, oldTo, to));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getOd()
	{
		return od;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOd(Dimension newOd)
	{
		Dimension oldOd = od;
		od = newOd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OD, oldOd, od));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getOdProximal()
	{
		return odProximal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOdProximal(Dimension newOdProximal)
	{
		Dimension oldOdProximal = odProximal;
		odProximal = newOdProximal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OD_PROXIMAL, oldOdProximal, odProximal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getOdAfter()
	{
		return odAfter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOdAfter(Dimension newOdAfter)
	{
		Dimension oldOdAfter = odAfter;
		odAfter = newOdAfter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OD_AFTER, oldOdAfter, odAfter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getOdAfterProximal()
	{
		return odAfterProximal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOdAfterProximal(Dimension newOdAfterProximal)
	{
		Dimension oldOdAfterProximal = odAfterProximal;
		odAfterProximal = newOdAfterProximal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OD_AFTER_PROXIMAL, oldOdAfterProximal, odAfterProximal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Oval getOval()
	{
		return oval;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOval(Oval newOval, NotificationChain msgs)
	{
		Oval oldOval = oval;
		oval = newOval;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OVAL, oldOval, newOval);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOval(Oval newOval)
	{
		if (newOval != oval)
		{
			NotificationChain msgs = null;
			if (oval != null)
				msgs = ((InternalEObject)oval).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SHAFT_SECTION__OVAL, null, msgs);
			if (newOval != null)
				msgs = ((InternalEObject)newOval).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SHAFT_SECTION__OVAL, null, msgs);
			msgs = basicSetOval(newOval, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__OVAL, newOval, newOval));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Disc> getDiscs()
	{
		if (discs == null)
		{
			discs = new EObjectContainmentEList<Disc>(Disc.class, this, ModelPackage.SHAFT_SECTION__DISCS);
		}
		return discs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRigid()
	{
		return rigid;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRigid(boolean newRigid)
	{
		boolean oldRigid = rigid;
		rigid = newRigid;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__RIGID, oldRigid, rigid));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStiffness()
	{
		return stiffness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStiffness(String newStiffness)
	{
		String oldStiffness = stiffness;
		stiffness = newStiffness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHAFT_SECTION__STIFFNESS, oldStiffness, stiffness));
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
			case ModelPackage.SHAFT_SECTION__OVAL:
				return basicSetOval(null, msgs);
			case ModelPackage.SHAFT_SECTION__DISCS:
				return ((InternalEList<?>)getDiscs()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.SHAFT_SECTION__NAME:
				return getName();
			case ModelPackage.SHAFT_SECTION__FROM:
				return getFrom();
			case ModelPackage.SHAFT_SECTION__TO:
				return getTo();
			case ModelPackage.SHAFT_SECTION__OD:
				return getOd();
			case ModelPackage.SHAFT_SECTION__OD_PROXIMAL:
				return getOdProximal();
			case ModelPackage.SHAFT_SECTION__OD_AFTER:
				return getOdAfter();
			case ModelPackage.SHAFT_SECTION__OD_AFTER_PROXIMAL:
				return getOdAfterProximal();
			case ModelPackage.SHAFT_SECTION__OVAL:
				return getOval();
			case ModelPackage.SHAFT_SECTION__DISCS:
				return getDiscs();
			case ModelPackage.SHAFT_SECTION__RIGID:
				return isRigid();
			case ModelPackage.SHAFT_SECTION__STIFFNESS:
				return getStiffness();
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
			case ModelPackage.SHAFT_SECTION__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__FROM:
				setFrom((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__TO:
				setTo((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__OD:
				setOd((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__OD_PROXIMAL:
				setOdProximal((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__OD_AFTER:
				setOdAfter((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__OD_AFTER_PROXIMAL:
				setOdAfterProximal((Dimension)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__OVAL:
				setOval((Oval)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__DISCS:
				getDiscs().clear();
				getDiscs().addAll((Collection<? extends Disc>)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__RIGID:
				setRigid((Boolean)newValue);
				return;
			case ModelPackage.SHAFT_SECTION__STIFFNESS:
				setStiffness((String)newValue);
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
			case ModelPackage.SHAFT_SECTION__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__FROM:
				setFrom(FROM_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__TO:
				setTo(TO_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__OD:
				setOd(OD_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__OD_PROXIMAL:
				setOdProximal(OD_PROXIMAL_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__OD_AFTER:
				setOdAfter(OD_AFTER_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__OD_AFTER_PROXIMAL:
				setOdAfterProximal(OD_AFTER_PROXIMAL_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__OVAL:
				setOval((Oval)null);
				return;
			case ModelPackage.SHAFT_SECTION__DISCS:
				getDiscs().clear();
				return;
			case ModelPackage.SHAFT_SECTION__RIGID:
				setRigid(RIGID_EDEFAULT);
				return;
			case ModelPackage.SHAFT_SECTION__STIFFNESS:
				setStiffness(STIFFNESS_EDEFAULT);
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
			case ModelPackage.SHAFT_SECTION__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.SHAFT_SECTION__FROM:
				return FROM_EDEFAULT == null ? from != null : !FROM_EDEFAULT.equals(from);
			case ModelPackage.SHAFT_SECTION__TO:
				return TO_EDEFAULT == null ? to != null : !TO_EDEFAULT.equals(to);
			case ModelPackage.SHAFT_SECTION__OD:
				return OD_EDEFAULT == null ? od != null : !OD_EDEFAULT.equals(od);
			case ModelPackage.SHAFT_SECTION__OD_PROXIMAL:
				return OD_PROXIMAL_EDEFAULT == null ? odProximal != null : !OD_PROXIMAL_EDEFAULT.equals(odProximal);
			case ModelPackage.SHAFT_SECTION__OD_AFTER:
				return OD_AFTER_EDEFAULT == null ? odAfter != null : !OD_AFTER_EDEFAULT.equals(odAfter);
			case ModelPackage.SHAFT_SECTION__OD_AFTER_PROXIMAL:
				return OD_AFTER_PROXIMAL_EDEFAULT == null ? odAfterProximal != null : !OD_AFTER_PROXIMAL_EDEFAULT.equals(odAfterProximal);
			case ModelPackage.SHAFT_SECTION__OVAL:
				return oval != null;
			case ModelPackage.SHAFT_SECTION__DISCS:
				return discs != null && !discs.isEmpty();
			case ModelPackage.SHAFT_SECTION__RIGID:
				return rigid != RIGID_EDEFAULT;
			case ModelPackage.SHAFT_SECTION__STIFFNESS:
				return STIFFNESS_EDEFAULT == null ? stiffness != null : !STIFFNESS_EDEFAULT.equals(stiffness);
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
		result.append(", from: ");
		result.append(from);
		result.append(", to: ");
		result.append(to);
		result.append(", od: ");
		result.append(od);
		result.append(", odProximal: ");
		result.append(odProximal);
		result.append(", odAfter: ");
		result.append(odAfter);
		result.append(", odAfterProximal: ");
		result.append(odAfterProximal);
		result.append(", rigid: ");
		result.append(rigid);
		result.append(", stiffness: ");
		result.append(stiffness);
		result.append(')');
		return result.toString();
	}

} //ShaftSectionImpl
