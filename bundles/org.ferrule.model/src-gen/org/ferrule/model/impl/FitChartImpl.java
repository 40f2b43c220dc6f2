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

import org.ferrule.model.Axis;
import org.ferrule.model.Conditions;
import org.ferrule.model.FitChart;
import org.ferrule.model.Lesion;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Paper;
import org.ferrule.model.SignOff;
import org.ferrule.model.VesselPath;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fit Chart</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getAudience <em>Audience</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getLibraries <em>Libraries</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getRules <em>Rules</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getConditions <em>Conditions</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getPath <em>Path</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getLesion <em>Lesion</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getPaper <em>Paper</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getFootnotes <em>Footnotes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.FitChartImpl#getSignOff <em>Sign Off</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FitChartImpl extends DocumentImpl implements FitChart
{
	/**
	 * The default value of the '{@link #getAudience() <em>Audience</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAudience()
	 * @generated
	 * @ordered
	 */
	protected static final String AUDIENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAudience() <em>Audience</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAudience()
	 * @generated
	 * @ordered
	 */
	protected String audience = AUDIENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAuthor() <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAuthor()
	 * @generated
	 * @ordered
	 */
	protected static final String AUTHOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAuthor() <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAuthor()
	 * @generated
	 * @ordered
	 */
	protected String author = AUTHOR_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLibraries() <em>Libraries</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLibraries()
	 * @generated
	 * @ordered
	 */
	protected EList<String> libraries;

	/**
	 * The default value of the '{@link #getRules() <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRules()
	 * @generated
	 * @ordered
	 */
	protected static final String RULES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRules() <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRules()
	 * @generated
	 * @ordered
	 */
	protected String rules = RULES_EDEFAULT;

	/**
	 * The cached value of the '{@link #getOuter() <em>Outer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOuter()
	 * @generated
	 * @ordered
	 */
	protected Axis outer;

	/**
	 * The cached value of the '{@link #getInner() <em>Inner</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInner()
	 * @generated
	 * @ordered
	 */
	protected Axis inner;

	/**
	 * The cached value of the '{@link #getConditions() <em>Conditions</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditions()
	 * @generated
	 * @ordered
	 */
	protected Conditions conditions;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected VesselPath path;

	/**
	 * The cached value of the '{@link #getLesion() <em>Lesion</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLesion()
	 * @generated
	 * @ordered
	 */
	protected Lesion lesion;

	/**
	 * The cached value of the '{@link #getPaper() <em>Paper</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaper()
	 * @generated
	 * @ordered
	 */
	protected Paper paper;

	/**
	 * The cached value of the '{@link #getFootnotes() <em>Footnotes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFootnotes()
	 * @generated
	 * @ordered
	 */
	protected EList<String> footnotes;

	/**
	 * The cached value of the '{@link #getSignOff() <em>Sign Off</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignOff()
	 * @generated
	 * @ordered
	 */
	protected SignOff signOff;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FitChartImpl()
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
		return ModelPackage.Literals.FIT_CHART;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAudience()
	{
		return audience;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAudience(String newAudience)
	{
		String oldAudience = audience;
		audience = newAudience;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__AUDIENCE, oldAudience, audience));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAuthor()
	{
		return author;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAuthor(String newAuthor)
	{
		String oldAuthor = author;
		author = newAuthor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__AUTHOR, oldAuthor, author));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getLibraries()
	{
		if (libraries == null)
		{
			libraries = new EDataTypeEList<String>(String.class, this, ModelPackage.FIT_CHART__LIBRARIES);
		}
		return libraries;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRules()
	{
		return rules;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRules(String newRules)
	{
		String oldRules = rules;
		rules = newRules;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__RULES, oldRules, rules));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Axis getOuter()
	{
		return outer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOuter(Axis newOuter, NotificationChain msgs)
	{
		Axis oldOuter = outer;
		outer = newOuter;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__OUTER, oldOuter, newOuter);
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
	public void setOuter(Axis newOuter)
	{
		if (newOuter != outer)
		{
			NotificationChain msgs = null;
			if (outer != null)
				msgs = ((InternalEObject)outer).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__OUTER, null, msgs);
			if (newOuter != null)
				msgs = ((InternalEObject)newOuter).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__OUTER, null, msgs);
			msgs = basicSetOuter(newOuter, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__OUTER, newOuter, newOuter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Axis getInner()
	{
		return inner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetInner(Axis newInner, NotificationChain msgs)
	{
		Axis oldInner = inner;
		inner = newInner;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__INNER, oldInner, newInner);
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
	public void setInner(Axis newInner)
	{
		if (newInner != inner)
		{
			NotificationChain msgs = null;
			if (inner != null)
				msgs = ((InternalEObject)inner).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__INNER, null, msgs);
			if (newInner != null)
				msgs = ((InternalEObject)newInner).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__INNER, null, msgs);
			msgs = basicSetInner(newInner, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__INNER, newInner, newInner));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Conditions getConditions()
	{
		return conditions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetConditions(Conditions newConditions, NotificationChain msgs)
	{
		Conditions oldConditions = conditions;
		conditions = newConditions;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__CONDITIONS, oldConditions, newConditions);
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
	public void setConditions(Conditions newConditions)
	{
		if (newConditions != conditions)
		{
			NotificationChain msgs = null;
			if (conditions != null)
				msgs = ((InternalEObject)conditions).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__CONDITIONS, null, msgs);
			if (newConditions != null)
				msgs = ((InternalEObject)newConditions).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__CONDITIONS, null, msgs);
			msgs = basicSetConditions(newConditions, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__CONDITIONS, newConditions, newConditions));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VesselPath getPath()
	{
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPath(VesselPath newPath, NotificationChain msgs)
	{
		VesselPath oldPath = path;
		path = newPath;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__PATH, oldPath, newPath);
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
	public void setPath(VesselPath newPath)
	{
		if (newPath != path)
		{
			NotificationChain msgs = null;
			if (path != null)
				msgs = ((InternalEObject)path).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__PATH, null, msgs);
			if (newPath != null)
				msgs = ((InternalEObject)newPath).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__PATH, null, msgs);
			msgs = basicSetPath(newPath, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__PATH, newPath, newPath));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lesion getLesion()
	{
		return lesion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLesion(Lesion newLesion, NotificationChain msgs)
	{
		Lesion oldLesion = lesion;
		lesion = newLesion;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__LESION, oldLesion, newLesion);
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
	public void setLesion(Lesion newLesion)
	{
		if (newLesion != lesion)
		{
			NotificationChain msgs = null;
			if (lesion != null)
				msgs = ((InternalEObject)lesion).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__LESION, null, msgs);
			if (newLesion != null)
				msgs = ((InternalEObject)newLesion).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__LESION, null, msgs);
			msgs = basicSetLesion(newLesion, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__LESION, newLesion, newLesion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paper getPaper()
	{
		return paper;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPaper(Paper newPaper, NotificationChain msgs)
	{
		Paper oldPaper = paper;
		paper = newPaper;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__PAPER, oldPaper, newPaper);
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
	public void setPaper(Paper newPaper)
	{
		if (newPaper != paper)
		{
			NotificationChain msgs = null;
			if (paper != null)
				msgs = ((InternalEObject)paper).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__PAPER, null, msgs);
			if (newPaper != null)
				msgs = ((InternalEObject)newPaper).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__PAPER, null, msgs);
			msgs = basicSetPaper(newPaper, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__PAPER, newPaper, newPaper));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getFootnotes()
	{
		if (footnotes == null)
		{
			footnotes = new EDataTypeEList<String>(String.class, this, ModelPackage.FIT_CHART__FOOTNOTES);
		}
		return footnotes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SignOff getSignOff()
	{
		return signOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSignOff(SignOff newSignOff, NotificationChain msgs)
	{
		SignOff oldSignOff = signOff;
		signOff = newSignOff;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__SIGN_OFF, oldSignOff, newSignOff);
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
	public void setSignOff(SignOff newSignOff)
	{
		if (newSignOff != signOff)
		{
			NotificationChain msgs = null;
			if (signOff != null)
				msgs = ((InternalEObject)signOff).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__SIGN_OFF, null, msgs);
			if (newSignOff != null)
				msgs = ((InternalEObject)newSignOff).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.FIT_CHART__SIGN_OFF, null, msgs);
			msgs = basicSetSignOff(newSignOff, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FIT_CHART__SIGN_OFF, newSignOff, newSignOff));
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
			case ModelPackage.FIT_CHART__OUTER:
				return basicSetOuter(null, msgs);
			case ModelPackage.FIT_CHART__INNER:
				return basicSetInner(null, msgs);
			case ModelPackage.FIT_CHART__CONDITIONS:
				return basicSetConditions(null, msgs);
			case ModelPackage.FIT_CHART__PATH:
				return basicSetPath(null, msgs);
			case ModelPackage.FIT_CHART__LESION:
				return basicSetLesion(null, msgs);
			case ModelPackage.FIT_CHART__PAPER:
				return basicSetPaper(null, msgs);
			case ModelPackage.FIT_CHART__SIGN_OFF:
				return basicSetSignOff(null, msgs);
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
			case ModelPackage.FIT_CHART__AUDIENCE:
				return getAudience();
			case ModelPackage.FIT_CHART__AUTHOR:
				return getAuthor();
			case ModelPackage.FIT_CHART__LIBRARIES:
				return getLibraries();
			case ModelPackage.FIT_CHART__RULES:
				return getRules();
			case ModelPackage.FIT_CHART__OUTER:
				return getOuter();
			case ModelPackage.FIT_CHART__INNER:
				return getInner();
			case ModelPackage.FIT_CHART__CONDITIONS:
				return getConditions();
			case ModelPackage.FIT_CHART__PATH:
				return getPath();
			case ModelPackage.FIT_CHART__LESION:
				return getLesion();
			case ModelPackage.FIT_CHART__PAPER:
				return getPaper();
			case ModelPackage.FIT_CHART__FOOTNOTES:
				return getFootnotes();
			case ModelPackage.FIT_CHART__SIGN_OFF:
				return getSignOff();
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
			case ModelPackage.FIT_CHART__AUDIENCE:
				setAudience((String)newValue);
				return;
			case ModelPackage.FIT_CHART__AUTHOR:
				setAuthor((String)newValue);
				return;
			case ModelPackage.FIT_CHART__LIBRARIES:
				getLibraries().clear();
				getLibraries().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.FIT_CHART__RULES:
				setRules((String)newValue);
				return;
			case ModelPackage.FIT_CHART__OUTER:
				setOuter((Axis)newValue);
				return;
			case ModelPackage.FIT_CHART__INNER:
				setInner((Axis)newValue);
				return;
			case ModelPackage.FIT_CHART__CONDITIONS:
				setConditions((Conditions)newValue);
				return;
			case ModelPackage.FIT_CHART__PATH:
				setPath((VesselPath)newValue);
				return;
			case ModelPackage.FIT_CHART__LESION:
				setLesion((Lesion)newValue);
				return;
			case ModelPackage.FIT_CHART__PAPER:
				setPaper((Paper)newValue);
				return;
			case ModelPackage.FIT_CHART__FOOTNOTES:
				getFootnotes().clear();
				getFootnotes().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.FIT_CHART__SIGN_OFF:
				setSignOff((SignOff)newValue);
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
			case ModelPackage.FIT_CHART__AUDIENCE:
				setAudience(AUDIENCE_EDEFAULT);
				return;
			case ModelPackage.FIT_CHART__AUTHOR:
				setAuthor(AUTHOR_EDEFAULT);
				return;
			case ModelPackage.FIT_CHART__LIBRARIES:
				getLibraries().clear();
				return;
			case ModelPackage.FIT_CHART__RULES:
				setRules(RULES_EDEFAULT);
				return;
			case ModelPackage.FIT_CHART__OUTER:
				setOuter((Axis)null);
				return;
			case ModelPackage.FIT_CHART__INNER:
				setInner((Axis)null);
				return;
			case ModelPackage.FIT_CHART__CONDITIONS:
				setConditions((Conditions)null);
				return;
			case ModelPackage.FIT_CHART__PATH:
				setPath((VesselPath)null);
				return;
			case ModelPackage.FIT_CHART__LESION:
				setLesion((Lesion)null);
				return;
			case ModelPackage.FIT_CHART__PAPER:
				setPaper((Paper)null);
				return;
			case ModelPackage.FIT_CHART__FOOTNOTES:
				getFootnotes().clear();
				return;
			case ModelPackage.FIT_CHART__SIGN_OFF:
				setSignOff((SignOff)null);
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
			case ModelPackage.FIT_CHART__AUDIENCE:
				return AUDIENCE_EDEFAULT == null ? audience != null : !AUDIENCE_EDEFAULT.equals(audience);
			case ModelPackage.FIT_CHART__AUTHOR:
				return AUTHOR_EDEFAULT == null ? author != null : !AUTHOR_EDEFAULT.equals(author);
			case ModelPackage.FIT_CHART__LIBRARIES:
				return libraries != null && !libraries.isEmpty();
			case ModelPackage.FIT_CHART__RULES:
				return RULES_EDEFAULT == null ? rules != null : !RULES_EDEFAULT.equals(rules);
			case ModelPackage.FIT_CHART__OUTER:
				return outer != null;
			case ModelPackage.FIT_CHART__INNER:
				return inner != null;
			case ModelPackage.FIT_CHART__CONDITIONS:
				return conditions != null;
			case ModelPackage.FIT_CHART__PATH:
				return path != null;
			case ModelPackage.FIT_CHART__LESION:
				return lesion != null;
			case ModelPackage.FIT_CHART__PAPER:
				return paper != null;
			case ModelPackage.FIT_CHART__FOOTNOTES:
				return footnotes != null && !footnotes.isEmpty();
			case ModelPackage.FIT_CHART__SIGN_OFF:
				return signOff != null;
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
		result.append(" (audience: ");
		result.append(audience);
		result.append(", author: ");
		result.append(author);
		result.append(", libraries: ");
		result.append(libraries);
		result.append(", rules: ");
		result.append(rules);
		result.append(", footnotes: ");
		result.append(footnotes);
		result.append(')');
		return result.toString();
	}

} //FitChartImpl
